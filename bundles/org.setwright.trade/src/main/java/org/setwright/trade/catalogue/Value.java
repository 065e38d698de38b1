package org.setwright.trade.catalogue;

/** A value of a field or a setting, in the form that everything general (files, forms, rules, reports) handles. */
public sealed interface Value {

	/** @return the value as people write it */
	String text();

	/** @return the value as rules compare it: a choice's word, an Integer, a Double in the base unit, a Boolean, or text */
	Object plain();

	/** @return whether both stand for the same, whatever unit each was written in */
	default boolean same(Value other) {
		return plain().equals(other.plain());
	}

	/** One of a closed list. */
	record OneOf(Domain.Choices.Option option) implements Value {
		@Override
		public String text() {
			return option.label();
		}

		@Override
		public Object plain() {
			return option.id();
		}
	}

	/** A whole number. */
	record Count(int number) implements Value {
		@Override
		public String text() {
			return Integer.toString(number);
		}

		@Override
		public Object plain() {
			return number;
		}
	}

	/** A quantity. */
	record Amount(Quantity quantity) implements Value {
		@Override
		public String text() {
			return quantity.toString();
		}

		@Override
		public Object plain() {
			return quantity.base();
		}
	}

	/** Yes or no. */
	record Flag(boolean yes) implements Value {
		@Override
		public String text() {
			return yes ? "yes" : "no";
		}

		@Override
		public Object plain() {
			return yes;
		}
	}

	/** Words. */
	record Words(String words) implements Value {
		@Override
		public String text() {
			return words;
		}

		@Override
		public Object plain() {
			return words;
		}
	}
}
