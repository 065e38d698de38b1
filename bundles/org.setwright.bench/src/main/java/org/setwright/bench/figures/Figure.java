package org.setwright.bench.figures;

import java.util.Set;
import java.util.TreeSet;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** What an expression comes to. */
sealed interface Figure {
	/** @return for people */
	String text();

	/** A number, with its unit or without. */
	record Amount(Quantity quantity) implements Figure {
		/** @return a number without unit */
		static Amount plain(double number) {
			return new Amount(new Quantity(number, Unit.NONE));
		}

		boolean isPlain() {
			return quantity.unit() == Unit.NONE;
		}

		@Override
		public String text() {
			return quantity.toString();
		}
	}

	/** A choice, yes or no, or words. */
	record Word(Value value) implements Figure {
		@Override
		public String text() {
			return value.text();
		}
	}

	/** It cannot be known yet. @param because what is not known */
	record Open(Set<String> because) implements Figure {
		public Open {
			because = Set.copyOf(because);
		}

		/** @return both reasons */
		Open and(Open other) {
			Set<String> all = new TreeSet<>(because);
			all.addAll(other.because);
			return new Open(all);
		}

		@Override
		public String text() {
			return "not known yet: " + String.join("; ", new TreeSet<>(because));
		}
	}

	/** @return the figure a value stands for */
	static Figure of(Value value) {
		if (value instanceof Value.Amount amount) {
			return new Amount(amount.quantity());
		}
		return value instanceof Value.Count count ? Amount.plain(count.number()) : new Word(value);
	}
}
