package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/** The values of a field worth trying: one out of each part of its domain that tests can tell apart. */
final class Values {
	private static final int SAMPLES = 5;
	private static final int MOST_WHOLE = 20;

	private Values() {
	}

	/** @param tests every test of the field; none when only a calculation reads it, and then values all over its domain */
	static List<Value> of(Field field, List<Test.OfField> tests) {
		Map<Object, Value> mentioned = new LinkedHashMap<>();
		tests.forEach(t -> literals(t).forEach(v -> mentioned.put(v.plain(), v)));
		if (field.domain() instanceof Domain.Measure measure) {
			return amounts(measure, samples(measure, tests));
		} else if (field.domain() instanceof Domain.Whole whole) {
			return java.util.stream.IntStream.rangeClosed(whole.least(), Math.min(whole.most(), whole.least() + MOST_WHOLE))
					.<Value>mapToObj(Value.Count::new).toList();
		} else if (field.domain() instanceof Domain.Words) {
			List<Value> values = new ArrayList<>(mentioned.values());
			values.add(new Value.Words("something else"));
			return values;
		}
		return choices(field.domain().listed(), mentioned, tests.isEmpty() || tests.stream().anyMatch(Values::comparesFields));
	}

	/** Of the choices no rule mentions, one stands for all. */
	private static List<Value> choices(List<Value> all, Map<Object, Value> mentioned, boolean every) {
		List<Value> values = new ArrayList<>();
		boolean other = false;
		for (Value value : all) {
			if (every || mentioned.containsKey(value.plain()) || !other) {
				other |= !mentioned.containsKey(value.plain());
				values.add(value);
			}
		}
		return values;
	}

	private static boolean comparesFields(Test.OfField test) {
		return test instanceof Test.Compare compare && compare.right() instanceof Operand.Bound;
	}

	private static List<Value> literals(Test.OfField test) {
		if (test instanceof Test.Among among) {
			return among.values();
		}
		return test instanceof Test.Compare compare && compare.right() instanceof Operand.Literal literal
				? List.of(literal.value()) : List.of();
	}

	/** @return the amounts {@code tests} compare with, in the domain's unit */
	static List<Double> thresholds(Domain.Measure measure, List<Test.OfField> tests) {
		return tests.stream().flatMap(t -> literals(t).stream()).map(v -> ((Value.Amount) v).quantity().in(measure.unit())).distinct().toList();
	}

	/** @return every threshold, and a round value between each two and beyond the last; evenly spread ones where none is named; rising */
	static List<Double> samples(Domain.Measure measure, List<Test.OfField> tests) {
		TreeSet<Double> edges = new TreeSet<>(thresholds(measure, tests));
		if (edges.isEmpty()) {
			for (int i = 1; i < SAMPLES; i++) {
				edges.add(measure.least() + (measure.most() - measure.least()) * i / SAMPLES);
			}
		}
		TreeSet<Double> numbers = new TreeSet<>(edges);
		numbers.addAll(between(measure, edges));
		return List.copyOf(numbers);
	}

	/** @return a round value before, between each two, and after the last of {@code edges}; rising */
	static List<Double> between(Domain.Measure measure, TreeSet<Double> edges) {
		List<Double> numbers = new ArrayList<>();
		double before = measure.least();
		for (double edge : edges) {
			numbers.add(between(before, edge));
			before = edge;
		}
		numbers.add(between(before, measure.most()));
		return numbers;
	}

	/** @return those of {@code numbers} that are in the domain, in its unit */
	static List<Value> amounts(Domain.Measure measure, List<Double> numbers) {
		return numbers.stream().filter(n -> n >= measure.least() && n <= measure.most())
				.<Value>map(n -> new Value.Amount(new Quantity(n, measure.unit()))).toList();
	}

	/** @return as round a number as lies strictly between two, near the lower when they are far apart */
	private static double between(double low, double high) {
		double middle = (low + high) / 2;
		for (double grain = Math.pow(10, Math.ceil(Math.log10(Math.max(high - low, 1e-6)))); grain > 1e-4; grain /= 10) {
			double round = Math.rint(middle / grain) * grain;
			if (round > low && round < high) {
				return round;
			}
		}
		return middle;
	}
}
