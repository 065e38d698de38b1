package org.setwright.engine.whynot;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.engine.explaining.Bases;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.NearestWay;
import org.setwright.engine.logic.Obstacle;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.whynot.WhyNot.Status;
import org.setwright.trade.catalogue.JobField;

/** Explains what became of rules on one job: spoke, outranked, silent or held open, and why. */
public final class Silence {
	private final Verdicts verdicts;
	private final Bases bases;
	private final JobFacts job;
	private final Outcome outcome;

	/** @param outcome what the job came to under the same rules */
	public Silence(Verdicts verdicts, Bases bases, JobFacts job, Outcome outcome) {
		this.verdicts = verdicts;
		this.bases = bases;
		this.job = job;
		this.outcome = outcome;
	}

	/** @return what became of {@code rule} */
	public WhyNot of(Rule rule) {
		Verdict verdict = verdicts.of(rule);
		if (verdict.truth() == Truth.TRUE) {
			List<Proposal> stronger = outrankedBy(rule);
			return new WhyNot(rule, stronger.isEmpty() ? Status.FIRED : Status.OUTRANKED, List.of(), Set.of(), stronger);
		}
		List<Blocker> blockers = NearestWay.obstacles(rule, job, verdicts::finding).stream().map(this::blocker).toList();
		Set<JobField> heldBy = new LinkedHashSet<>();
		verdict.unknowns().forEach(u -> heldBy.addAll(job.toLookUp(u)));
		return new WhyNot(rule, verdict.truth() == Truth.UNKNOWN ? Status.HELD_OPEN : Status.SILENT, blockers, heldBy, List.of());
	}

	/** @return the deciding proposals above all of this rule's; empty when one of its own decides or agrees, or it makes none */
	private List<Proposal> outrankedBy(Rule rule) {
		List<Proposal> above = new ArrayList<>();
		for (SettingOutcome setting : outcome.settings()) {
			if (setting.proposals().stream().anyMatch(p -> p.rule() == rule)) {
				if (setting.outranked().stream().noneMatch(p -> p.rule() == rule)) {
					return List.of();
				}
				above.addAll(setting.deciding());
			}
		}
		return above;
	}

	private Blocker blocker(Obstacle obstacle) {
		if (obstacle instanceof Obstacle.NoFact none) {
			String kind = none.condition().kind().label();
			boolean others = !job.job().entry(none.condition().kind()).facts().isEmpty();
			String is = none.unsaid() ? "Nobody has said whether there is " + none.condition().kind().one() : "There is no " + (others ? "further " : "") + kind;
			return new Blocker(none.condition(), is + "; the rule wants that " + Wording.of(none.condition()) + ".", List.of(),
					List.of(JobField.presence(none.condition().kind())), List.of());
		} else if (obstacle instanceof Obstacle.Unfit unfit) {
			Function<Operand.Bound, String> names = bound -> Optional.ofNullable(unfit.named().get(bound))
					.map(place -> place.label() + ", " + bases.of(place).said()).orElse(Wording.operand(bound));
			List<Reason.Tested> tested = unfit.failing().stream().map(t -> tested(t, unfit.nearest(), names)).toList();
			return new Blocker(unfit.condition(), Wording.fails(unfit.nearest(), tested, unfit.failing(), names), tested,
					tested.stream().map(Reason.Tested::field).toList(), List.of());
		} else if (obstacle instanceof Obstacle.InTheWay there) {
			List<JobField> looked = there.facts().stream().map(i -> new JobField(i.kind(), i.item(), Optional.empty())).toList();
			String facts = there.facts().stream().map(Wording::named).distinct().collect(Collectors.joining(", "));
			return new Blocker(there.condition(), "The rule wants that " + Wording.of(there.condition())
					+ (facts.isEmpty() ? "." : "; in the way: " + facts + "."), List.of(), looked, List.of());
		}
		Obstacle.NotFound missing = (Obstacle.NotFound) obstacle;
		String finding = missing.condition().finding();
		List<WhyNot> makers = verdicts.makers(finding).stream().map(this::of).toList();
		return new Blocker(missing.condition(), "Not found: " + Wording.finding(finding) + ".", List.of(), List.of(), makers);
	}

	private Reason.Tested tested(Test.OfField test, JobFacts.Item item, Function<Operand.Bound, String> names) {
		JobField place = JobField.of(item.kind(), item.item(), test.field());
		return new Reason.Tested(bases.of(place), job.answer(place), Wording.wanted(test, names));
	}
}
