package org.setwright.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.whynot.Blocker;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/** Changes a job so that what a blocker reports is no longer so, knowing nothing of how it was found. */
final class Mending {
	private Mending() {
	}

	/** @return the job with everything {@code blockers} report mended, or empty when that is beyond this simple means */
	static Optional<Job> mend(Job job, List<Blocker> blockers) {
		Optional<Job> mended = Optional.of(job);
		for (Blocker blocker : blockers) {
			mended = mended.flatMap(j -> mend(j, blocker));
		}
		return mended;
	}

	private static Optional<Job> mend(Job job, Blocker blocker) {
		if (blocker.condition() instanceof Condition.Found) {
			return blocker.makers().stream().map(m -> mend(job, m.blockers())).flatMap(Optional::stream).findFirst();
		} else if (blocker.condition() instanceof Condition.Not) {
			return remove(job, blocker.looked());
		}
		Condition.Pattern pattern = (Condition.Pattern) blocker.condition();
		if (pattern.kind().calculated()) {
			return Optional.empty();
		}
		return blocker.tested().isEmpty() ? add(job, pattern) : answer(job, pattern, blocker.tested());
	}

	private static Optional<Job> remove(Job job, List<JobField> facts) {
		if (facts.isEmpty() || facts.stream().anyMatch(f -> f.kind().always() || !f.kind().equals(facts.get(0).kind()))) {
			return Optional.empty();
		}
		List<Fact> left = new ArrayList<>(job.entry(facts.get(0).kind()).facts());
		for (int i = left.size() - 1; i >= 0; i--) {
			int item = i;
			if (facts.stream().anyMatch(f -> f.item() == item)) {
				left.remove(i);
			}
		}
		return Optional.of(job.with(facts.get(0).kind(), Job.Entry.of(left)));
	}

	private static Optional<Job> add(Job job, Condition.Pattern pattern) {
		Map<Field, Value> known = new HashMap<>();
		for (Test.OfField test : leaves(pattern.test(), true)) {
			Optional<Answer<Value>> answer = satisfying(test);
			if (answer.isEmpty()) {
				return Optional.empty();
			}
			answer.get().value().ifPresent(v -> known.put(test.field(), v));
		}
		List<Fact> facts = new ArrayList<>(job.entry(pattern.kind()).facts());
		facts.add(pattern.kind().create(known));
		return Optional.of(job.with(pattern.kind(), Job.Entry.of(facts)));
	}

	private static Optional<Job> answer(Job job, Condition.Pattern pattern, List<Reason.Tested> failing) {
		Job mended = job;
		for (Reason.Tested tested : failing) {
			Optional<Answer<Value>> answer = leaves(pattern.test(), false).stream()
					.filter(t -> t.field().equals(tested.field().field().orElseThrow()) && Wording.wanted(t).equals(tested.wanted()))
					.findFirst().flatMap(Mending::satisfying);
			if (answer.isEmpty()) {
				return Optional.empty();
			}
			FactKind kind = pattern.kind();
			if (mended.entry(kind).facts().isEmpty()) {
				mended = mended.with(kind, Job.Entry.of(List.of(kind.create(Map.of()))));
			}
			mended = mended.with(kind, tested.field().item(), tested.field().field().orElseThrow(), answer.get());
		}
		return Optional.of(mended);
	}

	private static List<Test.OfField> leaves(Test test, boolean firstOfAny) {
		List<Test> inner = test instanceof Test.AllOf all ? all.tests()
				: test instanceof Test.AnyOf any ? firstOfAny ? any.tests().subList(0, 1) : any.tests() : List.of();
		return test instanceof Test.OfField ofField ? List.of(ofField)
				: inner.stream().flatMap(t -> leaves(t, firstOfAny).stream()).toList();
	}

	private static Optional<Answer<Value>> satisfying(Test.OfField test) {
		if (test instanceof Test.IsUnknown isUnknown && isUnknown.unknown()) {
			return Optional.of(Answer.unknown());
		}
		return values(test).stream().filter(v -> passes(test, v)).findFirst().map(Answer::of);
	}

	private static List<Value> values(Test.OfField test) {
		List<Value> values = new ArrayList<>(test.field().domain().listed());
		if (test instanceof Test.Compare compare && compare.right() instanceof Operand.Literal literal) {
			values.add(literal.value());
		} else if (test instanceof Test.Among among) {
			values.addAll(among.values());
		}
		if (test.field().domain() instanceof Domain.Measure m) {
			for (int i = 0; i <= 1000; i++) {
				values.add(new Value.Amount(new Quantity(m.least() + (m.most() - m.least()) * i / 1000, m.unit())));
			}
		} else if (test.field().domain() instanceof Domain.Whole w) {
			for (int i = w.least(); i <= Math.min(w.most(), w.least() + 1000); i++) {
				values.add(new Value.Count(i));
			}
		} else if (test.field().domain() instanceof Domain.Words) {
			values.add(new Value.Words("other"));
		}
		return values;
	}

	private static boolean passes(Test.OfField test, Value value) {
		if (test instanceof Test.Compare compare) {
			return compare.right() instanceof Operand.Literal literal
					&& compare.comparison().holds(value.plain(), literal.value().plain());
		} else if (test instanceof Test.Among among) {
			return among.values().stream().anyMatch(value::same) == among.among();
		}
		return !(test instanceof Test.Matches matches) || matches.expression().matcher(value.text()).matches();
	}

}
