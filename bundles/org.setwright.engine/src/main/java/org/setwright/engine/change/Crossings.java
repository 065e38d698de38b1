package org.setwright.engine.change;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/**
 * Finds where a stated quantity makes a calculated one pass a threshold that rules test: between two samples on different sides of
 * it the interval is halved until it is narrow. A calculation that passes a threshold twice between two samples escapes.
 *
 * @param tested the calculated quantities that rules test, with the thresholds, by kind of fact
 */
record Crossings(Catalogue catalogue, Map<FactKind, Map<Field, List<Test.OfField>>> tested) {
	private static final int HALVINGS = 40;

	/**
	 * @param place of a stated quantity with this {@code domain}
	 * @param values of it to begin with, in the domain's unit; its ends are looked at too
	 * @return values, in the domain's unit, at which something calculated from it passes a threshold
	 */
	TreeSet<Double> at(JobField place, Domain.Measure domain, List<Double> values, Job job) {
		TreeSet<Double> found = new TreeSet<>();
		TreeSet<Double> all = new TreeSet<>(values);
		all.addAll(List.of(domain.least(), domain.most()));
		List<Double> samples = List.copyOf(all);
		String source = place.kind().name() + "." + place.field().orElseThrow().name();
		DoubleFunction<Job> with = amount -> catalogue.withCalculations(
				new Change.Answered(place, new Value.Amount(new Quantity(amount, domain.unit()))).apply(job));
		List<Job> jobs = samples.stream().map(with::apply).toList();
		tested.forEach((kind, fields) -> fields.forEach((field, tests) -> {
			if (field.calculation().orElseThrow().from().contains(source) && field.domain() instanceof Domain.Measure measure) {
				for (double threshold : Values.thresholds(measure, tests)) {
					for (int i = 1; i < jobs.size(); i++) {
						Optional<Boolean> low = above(jobs.get(i - 1), kind, field, measure, threshold);
						Optional<Boolean> high = above(jobs.get(i), kind, field, measure, threshold);
						if (low.isPresent() && high.isPresent() && !low.equals(high)) {
							found.add(halve(samples.get(i - 1), samples.get(i), low,
									amount -> above(with.apply(amount), kind, field, measure, threshold)));
						}
					}
				}
			}
		}));
		return found;
	}

	private static double halve(double from, double to, Optional<Boolean> low, DoubleFunction<Optional<Boolean>> above) {
		for (int i = 0; i < HALVINGS; i++) {
			double middle = (from + to) / 2;
			if (above.apply(middle).equals(low)) {
				from = middle;
			} else {
				to = middle;
			}
		}
		return to;
	}

	/** @return whether the first calculated fact of {@code kind} is above {@code threshold}; empty when it is not known */
	private static Optional<Boolean> above(Job job, FactKind kind, Field field, Domain.Measure measure, double threshold) {
		List<Fact> facts = job.entry(kind).facts();
		Answer<Value> answer = facts.isEmpty() ? Answer.unknown() : kind.answer(facts.get(0), field);
		return answer.value().map(v -> ((Value.Amount) v).quantity().in(measure.unit()) > threshold);
	}
}
