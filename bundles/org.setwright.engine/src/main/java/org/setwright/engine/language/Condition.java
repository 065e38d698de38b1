package org.setwright.engine.language;

import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.FactKind;

/** What has to hold for a rule to speak. */
public sealed interface Condition {
	/** Where it begins. */
	Position at();

	/** Some fact of {@code kind} passes {@code test}. @param binding its name, with the dollar sign, or empty */
	record Pattern(Optional<String> binding, FactKind kind, Test test, Position at) implements Condition {
	}

	/** Some rule has made this finding. */
	record Found(String finding, Position at) implements Condition {
	}

	/** There is no way to make {@code inner} hold. */
	record Not(Condition inner, Position at) implements Condition {
	}

	/** There is at least one way to make {@code inner} hold. */
	record Exists(Condition inner, Position at) implements Condition {
	}

	/** All hold. */
	record All(List<Condition> inner, Position at) implements Condition {
		public All {
			inner = List.copyOf(inner);
		}
	}

	/** At least one holds. */
	record Either(List<Condition> inner, Position at) implements Condition {
		public Either {
			inner = List.copyOf(inner);
		}
	}
}
