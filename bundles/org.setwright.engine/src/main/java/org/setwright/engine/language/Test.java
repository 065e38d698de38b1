package org.setwright.engine.language;

import java.util.List;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/** What a pattern demands of one fact. A test of an unknown field is neither true nor false. */
public sealed interface Test {

	/** A test of one field. */
	sealed interface OfField extends Test {
		/** The field it reads. */
		Field field();

		/** Where it begins. */
		Position at();
	}

	/** {@code field op right}. */
	record Compare(Field field, Comparison comparison, Operand right, Position at) implements OfField {
	}

	/** {@code field in ( ... )} or {@code field not in ( ... )}. */
	record Among(Field field, boolean among, List<Value> values, Position at) implements OfField {
		public Among {
			values = List.copyOf(values);
		}
	}

	/** {@code field matches "..."}: the whole text matches the regular expression. */
	record Matches(Field field, java.util.regex.Pattern expression, Position at) implements OfField {
	}

	/** {@code field == UNKNOWN} or {@code field != UNKNOWN}; always true or false. */
	record IsUnknown(Field field, boolean unknown, Position at) implements OfField {
	}

	/** {@code $name : field}: gives the answer a name; demands that it is known. */
	record Bind(String variable, Field field, Position at) implements OfField {
	}

	/** All hold; holds when empty. */
	record AllOf(List<Test> tests) implements Test {
		public AllOf {
			tests = List.copyOf(tests);
		}
	}

	/** At least one holds. */
	record AnyOf(List<Test> tests) implements Test {
		public AnyOf {
			tests = List.copyOf(tests);
		}
	}
}
