package org.setwright.check.strength;

import java.util.ArrayList;
import java.util.List;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/** The values somebody could write by mistake. */
final class Neighbours {
	/** A quantity is missed by this share of itself; zero by a hundredth of what is allowed. */
	private static final double STEP = 0.1;

	private Neighbours() {
	}

	/** @return other values of {@code domain} next to {@code value}: at most one on either side; none for yes and no */
	static List<Value> of(Domain domain, Value value) {
		List<Value> others = new ArrayList<>();
		if (domain instanceof Domain.Whole whole) {
			int number = ((Value.Count) value).number();
			whole(number + 1, whole, others);
			whole(number - 1, whole, others);
		} else if (domain instanceof Domain.Measure measure) {
			double number = ((Value.Amount) value).quantity().in(measure.unit());
			double step = number == 0 ? (measure.most() - measure.least()) / 100 : STEP * Math.abs(number);
			amount(number + step, measure, others);
			amount(number - step, measure, others);
		} else if (domain instanceof Domain.Choices choices) {
			List<Value> all = choices.listed();
			int at = all.stream().map(Value::plain).toList().indexOf(value.plain());
			others.add(all.get((at + 1) % all.size()));
		} else if (domain instanceof Domain.Words) {
			others.add(new Value.Words("something else"));
		}
		others.removeIf(value::same);
		return others;
	}

	private static void whole(int number, Domain.Whole whole, List<Value> into) {
		if (number >= whole.least() && number <= whole.most()) {
			into.add(new Value.Count(number));
		}
	}

	private static void amount(double number, Domain.Measure measure, List<Value> into) {
		if (number >= measure.least() && number <= measure.most()) {
			into.add(new Value.Amount(new Quantity(number, measure.unit())));
		}
	}
}
