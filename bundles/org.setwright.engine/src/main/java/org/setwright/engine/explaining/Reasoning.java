package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.engine.logic.Bindings;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Tests;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.later.Later;
import org.setwright.engine.outcome.Reason;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;

/** Turns a way in which a rule's conditions held into reasons down to the job's fields. */
public final class Reasoning {
	private final JobFacts job;
	private final Bases bases;
	private final Verdicts verdicts;
	private final Function<String, List<Firing>> makers;

	/** @param makers the firings that made a finding, by its name */
	public Reasoning(JobFacts job, Bases bases, Verdicts verdicts, Function<String, List<Firing>> makers) {
		this.job = job;
		this.bases = bases;
		this.verdicts = verdicts;
		this.makers = makers;
	}

	/** @return the firing of {@code rule} in this {@code way}; its reasons are put into words when they are asked for */
	public Firing firing(Rule rule, Verdict.Way way) {
		return new Firing(rule, new Later<>(() -> reasons(way)));
	}

	private List<Reason> reasons(Verdict.Way way) {
		Bindings bindings = Bindings.after(way.steps());
		return way.steps().stream().map(step -> reason(step, bindings)).toList();
	}

	private Reason reason(Verdict.Step step, Bindings bindings) {
		if (step.condition() instanceof Condition.Pattern pattern) {
			return ofFact(pattern, step.item().orElseThrow(), bindings);
		} else if (step.condition() instanceof Condition.Found found) {
			return new Reason.OfFinding(found.finding(), makers.apply(found.finding()), Said.sentence(Wording.of(found)));
		}
		List<JobField> looked = new ArrayList<>();
		List<Reason.AskedFinding> findings = new ArrayList<>();
		looked(step.condition(), looked, findings);
		return new Reason.OfAbsence(looked.stream().distinct().map(bases::of).toList(), findings,
				Said.sentence(Wording.of(step.condition())));
	}

	private Reason ofFact(Condition.Pattern pattern, JobFacts.Item item, Bindings bindings) {
		List<Reason.Tested> tested = Tests.passed(pattern.test(), item, bindings).stream()
				.map(test -> tested(test, item, bound -> bindings.placeOf(bound).map(this::named).orElse(Wording.operand(bound)))).toList();
		Basis fact = bases.of(new JobField(item.kind(), item.item(), Optional.empty()));
		return new Reason.OfFact(fact, tested, Wording.passes(item, tested));
	}

	private Reason.Tested tested(Test.OfField test, JobFacts.Item item, Function<Operand.Bound, String> names) {
		JobField place = JobField.of(item.kind(), item.item(), test.field());
		return new Reason.Tested(bases.of(place), job.answer(place), Wording.wanted(test, names));
	}

	private String named(JobField place) {
		return bases.of(place).sentence().replaceFirst(" is ", ", ");
	}

	/** Collects the places a condition below not or exists looks at. */
	private void looked(Condition condition, List<JobField> into, List<Reason.AskedFinding> findings) {
		if (condition instanceof Condition.Pattern pattern) {
			FactKind kind = pattern.kind();
			List<JobFacts.Item> items = job.items(kind);
			if (items.isEmpty() || items.get(0).phantom()) {
				into.add(JobField.presence(kind));
			} else {
				items.forEach(i -> fields(pattern.test(), i, into));
			}
		} else if (condition instanceof Condition.Found found) {
			findings.add(asked(found.finding()));
		}
		condition.inner().forEach(c -> looked(c, into, findings));
	}

	private Reason.AskedFinding asked(String finding) {
		List<Reason.SilentMaker> silent = verdicts.makers(finding).stream().filter(m -> verdicts.of(m).truth() != Truth.TRUE)
				.map(m -> new Reason.SilentMaker(m, bases.of(verdicts.looked(m)))).toList();
		return new Reason.AskedFinding(finding, makers.apply(finding), silent);
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
}
