package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.Iterator;
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
		List<Reason> reasons = new ArrayList<>();
		Iterator<Verdict.Choice> choices = way.choices().iterator();
		rule.when().forEach(c -> add(c, choices, reasons));
		return new Firing(rule, reasons);
	}

	private void add(Condition condition, Iterator<Verdict.Choice> choices, List<Reason> reasons) {
		if (condition instanceof Condition.Pattern) {
			reasons.add(ofFact(choices.next()));
		} else if (condition instanceof Condition.Found found) {
			reasons.add(new Reason.OfFinding(found.finding(), makers.apply(found.finding()), sentence(Wording.of(found))));
		} else if (condition instanceof Condition.All all) {
			all.inner().forEach(c -> add(c, choices, reasons));
		} else if (condition instanceof Condition.Either either) {
			either(either, choices, reasons);
		} else {
			List<JobField> looked = new ArrayList<>();
			looked(condition, looked);
			reasons.add(new Reason.OfAbsence(looked, sentence(Wording.of(condition))));
		}
	}

	/** Of conditions joined by or, the one that held is told by the next choice; a branch without patterns has none. */
	private void either(Condition.Either either, Iterator<Verdict.Choice> choices, List<Reason> reasons) {
		List<Verdict.Choice> rest = new ArrayList<>();
		choices.forEachRemaining(rest::add);
		for (Condition branch : either.inner()) {
			if (!rest.isEmpty() && firstPattern(branch) == rest.get(0).pattern()) {
				add(branch, rest.iterator(), reasons);
				return;
			}
		}
		List<JobField> looked = new ArrayList<>();
		looked(either, looked);
		reasons.add(new Reason.OfAbsence(looked, sentence(Wording.of(either))));
	}

	private static Condition firstPattern(Condition condition) {
		if (condition instanceof Condition.Pattern) {
			return condition;
		} else if (condition instanceof Condition.All && !condition.inner().isEmpty()) {
			return firstPattern(condition.inner().get(0));
		}
		return null;
	}

	private Reason ofFact(Verdict.Choice choice) {
		JobFacts.Item item = choice.item();
		List<Reason.Tested> tested = new ArrayList<>();
		tested(choice.pattern().test(), item, tested);
		String numbered = item.kind().label() + (item.kind().many() ? " " + (item.item() + 1) : "");
		String answers = tested.stream().map(t -> t.field().field().orElseThrow().label() + " is " + text(t))
				.distinct().collect(Collectors.joining("; "));
		return new Reason.OfFact(new JobField(item.kind(), item.item(), java.util.Optional.empty()), tested,
				sentence(answers.isEmpty() ? "there is " + article(numbered) : numbered + ": " + answers));
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

	private static String article(String noun) {
		return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
	}

	private static String sentence(String words) {
		return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
	}
}
