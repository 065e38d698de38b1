package org.setwright.engine.language;

import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.FactKind;

/** What has to hold for a rule to speak. */
public sealed interface Condition {
	/** Where it begins. */
	Position at();

	/** @return the conditions it is made of; empty for a pattern and for a finding */
	default List<Condition> inner() {
		return List.of();
	}

	/** Some fact of {@code kind} passes {@code test}. @param binding its name, with the dollar sign, or empty */
	record Pattern(Optional<String> binding, FactKind kind, Test test, Position at) implements Condition {
	}

	/** Some rule has made this finding. */
	record Found(String finding, Position at) implements Condition {
	}

	/** There is no way to make {@code negated} hold. */
	record Not(Condition negated, Position at) implements Condition {
		@Override
		public List<Condition> inner() {
			return List.of(negated);
		}
	}

	/** There is at least one way to make {@code sought} hold. */
	record Exists(Condition sought, Position at) implements Condition {
		@Override
		public List<Condition> inner() {
			return List.of(sought);
		}
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
