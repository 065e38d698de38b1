package org.setwright.trade.calculation.facts;

import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** What a job states, read with unknowns kept: a condition is certainly true, certainly false, or unknown. */
record Stated(Job job) {

	/** @return the answer of the job's only fact of {@code type}; unknown too when there is none */
	<F extends Fact, T> Answer<T> answer(Class<F> type, Function<F, Answer<T>> field) {
		return job.one(type).map(field).orElse(Answer.unknown());
	}

	/** @return the same for a quantity, as a number in {@code unit} */
	<F extends Fact> Answer<Double> number(Class<F> type, Function<F, Answer<Quantity>> field, Unit unit) {
		return answer(type, field).map(q -> q.in(unit));
	}

	/** @return whether there is a fact of {@code type} whose {@code field} passes {@code test} */
	<F extends Fact, T> Answer<Boolean> any(Class<F> type, Function<F, Answer<T>> field, Predicate<T> test) {
		Job.Entry entry = job.entry(type);
		return switch (entry.presence()) {
			case UNKNOWN -> Answer.unknown();
			case NONE -> Answer.of(false);
			case PRESENT -> or(entry.facts().stream().map(fact -> field.apply(type.cast(fact)).map(test::test)).toList());
		};
	}

	/** @return whether all hold; false as soon as one certainly does not */
	@SafeVarargs
	static Answer<Boolean> and(Answer<Boolean>... all) {
		return decide(List.of(all), false);
	}

	/** @return whether one holds; true as soon as one certainly does */
	static Answer<Boolean> or(List<Answer<Boolean>> any) {
		return decide(any, true);
	}

	private static Answer<Boolean> decide(List<Answer<Boolean>> parts, boolean decisive) {
		if (parts.contains(Answer.of(decisive))) {
			return Answer.of(decisive);
		}
		return parts.stream().allMatch(Answer::isKnown) ? Answer.of(!decisive) : Answer.unknown();
	}

	/** @return the sum; unknown when one part is */
	@SafeVarargs
	static Answer<Double> sum(Answer<Double>... parts) {
		return all(List.of(parts), Double::sum);
	}

	/** @param parts not empty @return all of them joined; unknown when one part is */
	static <T> Answer<T> all(List<Answer<T>> parts, BinaryOperator<T> join) {
		return parts.stream().reduce((a, b) -> Answer.both(a, b, join)).orElseThrow();
	}

	/** @return {@code yes} when {@code condition} holds, {@code no} when it does not, unknown when that is unknown */
	static <T> Answer<T> choose(Answer<Boolean> condition, Supplier<Answer<T>> yes, Supplier<Answer<T>> no) {
		return condition.then(holds -> holds ? yes.get() : no.get());
	}

	/** @return what a job says of a calculated kind that exists when {@code applies} */
	static Job.Entry entry(Answer<Boolean> applies, Supplier<Fact> fact) {
		return applies.map(yes -> yes ? Job.Entry.of(List.of(fact.get())) : Job.Entry.NONE).value().orElse(Job.Entry.UNKNOWN);
	}

	/** @return {@code number} as a quantity in {@code unit}, rounded to a thousandth */
	static Answer<Quantity> quantity(Answer<Double> number, Unit unit) {
		return number.map(n -> new Quantity(Math.rint(n * 1000) / 1000, unit));
	}
}
