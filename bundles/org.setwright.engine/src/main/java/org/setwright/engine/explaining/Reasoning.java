package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Reason;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;

/** Turns a way in which a rule's conditions held into reasons down to the job's fields. */
public final class Reasoning {
	private final JobFacts job;
	private final Function<String, List<Firing>> makers;

	/** @param makers the firings that made a finding, by its name */
	public Reasoning(JobFacts job, Function<String, List<Firing>> makers) {
		this.job = job;
		this.makers = makers;
	}

	/** @return the firing of {@code rule} in this {@code way} */
	public Firing firing(Rule rule, Verdict.Way way) {
		return new Firing(rule, way.steps().stream().map(this::reason).toList());
	}

	private Reason reason(Verdict.Step step) {
		if (step.condition() instanceof Condition.Pattern pattern) {
			return ofFact(pattern, step.item().orElseThrow());
		} else if (step.condition() instanceof Condition.Found found) {
			return new Reason.OfFinding(found.finding(), makers.apply(found.finding()), sentence(Wording.of(found)));
		}
		List<JobField> looked = new ArrayList<>();
		looked(step.condition(), looked);
		return new Reason.OfAbsence(looked, sentence(Wording.of(step.condition())));
	}

	private Reason ofFact(Condition.Pattern pattern, JobFacts.Item item) {
		List<Reason.Tested> tested = new ArrayList<>();
		tested(pattern.test(), item, tested);
		String numbered = item.kind().label() + (item.kind().many() ? " " + (item.item() + 1) : "");
		String answers = tested.stream().map(t -> t.field().field().orElseThrow().label() + " is " + text(t))
				.distinct().collect(Collectors.joining("; "));
		return new Reason.OfFact(new JobField(item.kind(), item.item(), java.util.Optional.empty()), tested,
				sentence(answers.isEmpty() ? "there is " + (item.kind().many() ? numbered : item.kind().one()) : numbered + ": " + answers));
	}

	private static String text(Reason.Tested tested) {
		return tested.actual().value().map(v -> v.text()).orElse("unknown");
	}

	private void tested(Test test, JobFacts.Item item, List<Reason.Tested> into) {
		if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> tested(t, item, into));
		} else if (test instanceof Test.AnyOf any) {
			any.tests().forEach(t -> tested(t, item, into));
		} else {
			Test.OfField ofField = (Test.OfField) test;
			JobField place = JobField.of(item.kind(), item.item(), ofField.field());
			into.add(new Reason.Tested(place, job.answer(place), Wording.wanted(ofField)));
		}
	}

	/** Collects the places a condition below not or exists looks at. */
	private void looked(Condition condition, List<JobField> into) {
		if (condition instanceof Condition.Pattern pattern) {
			FactKind kind = pattern.kind();
			List<JobFacts.Item> items = job.items(kind);
			if (items.isEmpty() || items.get(0).phantom()) {
				into.add(JobField.presence(kind));
			} else {
				items.forEach(i -> fields(pattern.test(), i, into));
			}
		}
		condition.inner().forEach(c -> looked(c, into));
	}

	private static void fields(Test test, JobFacts.Item item, List<JobField> into) {
		if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> fields(t, item, into));
			if (all.tests().isEmpty()) {
				into.add(JobField.presence(item.kind()));
			}
		} else if (test instanceof Test.AnyOf any) {
			any.tests().forEach(t -> fields(t, item, into));
		} else {
			into.add(item.place(((Test.OfField) test).field()));
		}
	}

	private static String sentence(String words) {
		return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
	}
}
