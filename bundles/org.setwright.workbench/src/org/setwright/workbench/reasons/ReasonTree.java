package org.setwright.workbench.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.reasons.ReasonNode.InJob;
import org.setwright.workbench.reasons.ReasonNode.InRules;
import org.setwright.workbench.reasons.ReasonNode.Sign;

/** Turns what a setting comes to into an outline: setting, proposals, rules, conditions, findings, job fields. */
public final class ReasonTree {
	private final Job job;

	private ReasonTree(Job job) {
		this.job = job;
	}

	/** @param job the job, calculated facts included @return the outline, strongest proposal first, below the setting itself */
	public static ReasonNode of(SettingOutcome outcome, Job job) {
		return new ReasonTree(job).of(outcome);
	}

	private ReasonNode of(SettingOutcome outcome) {
		List<ReasonNode> children = new ArrayList<>();
		if (!outcome.proposals().isEmpty()) {
			outcome.deciding().forEach(p -> children.add(proposal(p, Sign.RULE)));
			outcome.outranked().forEach(p -> children.add(proposal(p, Sign.OUTRANKED)));
		}
		outcome.heldOpen().forEach(h -> children.add(heldOpen(h)));
		Setting setting = outcome.setting();
		return new ReasonNode(sign(outcome), NLS.bind(Messages.ReasonTree_setting, setting.label(), summary(outcome)), "", //$NON-NLS-1$
				String.join("\n", setting.meaning(), explained(outcome)), Optional.empty(), children); //$NON-NLS-1$
	}

	private static Sign sign(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> Sign.SETTLED;
			case DISPUTED -> Sign.DISPUTED;
			case GAP -> Sign.GAP;
			case PERHAPS -> Sign.PERHAPS;
		};
	}

	private static String summary(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> outcome.value().orElseThrow().text();
			case DISPUTED -> Messages.ReasonTree_disputed;
			case GAP -> Messages.ReasonTree_gap;
			case PERHAPS -> Messages.ReasonTree_perhaps;
		};
	}

	private static String explained(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> outcome.heldOpen().isEmpty() ? Messages.ReasonTree_settledExplained
					: Messages.ReasonTree_settledSoFarExplained;
			case DISPUTED -> Messages.ReasonTree_disputedExplained;
			case GAP -> Messages.ReasonTree_gapExplained;
			case PERHAPS -> Messages.ReasonTree_perhapsExplained;
		};
	}

	private ReasonNode proposal(Proposal proposal, Sign sign) {
		String said = sign == Sign.OUTRANKED ? Messages.ReasonTree_outranked : Messages.ReasonTree_proposes;
		return rule(sign, NLS.bind(said, proposal.rule().name(), proposal.value().text()), proposal.rule(),
				conditions(proposal.firing()));
	}

	private ReasonNode rule(Sign sign, String text, Rule rule, List<ReasonNode> conditions) {
		return new ReasonNode(sign, text, rule.authority().label(), detail(rule), Optional.of(new InRules(rule.at())),
				conditions);
	}

	private static String detail(Rule rule) {
		return NLS.bind(Messages.ReasonTree_ruleDetail, new Object[] { rule.because(), rule.source(),
				rule.authority().label(), rule.authority().meaning(), rule.at() });
	}

	private List<ReasonNode> conditions(Firing firing) {
		return firing.reasons().stream().map(this::condition).toList();
	}

	private ReasonNode condition(Reason reason) {
		if (reason instanceof Reason.OfFact fact) {
			return new ReasonNode(Sign.CONDITION, fact.sentence(), "", fact.sentence(), //$NON-NLS-1$
					Optional.of(new InJob(fact.fact())), fact.tested().stream().map(this::tested).toList());
		} else if (reason instanceof Reason.OfFinding finding) {
			return new ReasonNode(Sign.FINDING, finding.sentence(), "", finding.sentence(), Optional.empty(), //$NON-NLS-1$
					finding.madeBy().stream().map(this::finder).toList());
		}
		Reason.OfAbsence absence = (Reason.OfAbsence) reason;
		return new ReasonNode(Sign.CONDITION, absence.sentence(), "", absence.sentence(), Optional.empty(), //$NON-NLS-1$
				absence.looked().stream().map(this::looked).toList());
	}

	private ReasonNode looked(JobField field) {
		String found = field.field().isEmpty() ? presence(job.entry(field.kind()).presence()) : answer(field);
		return field(Sign.FACT, NLS.bind(Messages.ReasonTree_fact, field.label(), found), field, ""); //$NON-NLS-1$
	}

	private static String presence(Job.Presence presence) {
		return switch (presence) {
			case PRESENT -> Messages.ReasonTree_yes;
			case NONE -> Messages.ReasonTree_none;
			case UNKNOWN -> Messages.ReasonTree_unknown;
		};
	}

	private String answer(JobField field) {
		return job.entry(field.kind()).facts().stream().skip(field.item()).findFirst()
				.flatMap(f -> field.kind().answer(f, field.field().orElseThrow()).value()).map(v -> v.text())
				.orElse(Messages.ReasonTree_unknown);
	}

	private ReasonNode finder(Firing firing) {
		return rule(Sign.RULE, NLS.bind(Messages.ReasonTree_foundBy, firing.rule().name()), firing.rule(),
				conditions(firing));
	}

	private ReasonNode tested(Reason.Tested tested) {
		String actual = tested.actual().value().map(v -> v.text()).orElse(Messages.ReasonTree_unknown);
		Sign sign = tested.actual().isKnown() ? Sign.FACT : Sign.UNKNOWN;
		return field(sign, NLS.bind(Messages.ReasonTree_fact, tested.field().label(), actual), tested.field(),
				NLS.bind(Messages.ReasonTree_wanted, tested.wanted()));
	}

	private ReasonNode heldOpen(HeldOpen held) {
		Set<JobField> unknowns = held.by();
		return rule(Sign.HELD_OPEN, NLS.bind(Messages.ReasonTree_heldOpen, held.rule().name()), held.rule(),
				unknowns.stream().sorted((a, b) -> a.label().compareTo(b.label()))
						.map(f -> field(Sign.UNKNOWN, f, Messages.ReasonTree_notLookedUp)).toList());
	}

	private static ReasonNode field(Sign sign, JobField field, String remark) {
		return field(sign, field.label(), field, remark);
	}

	private static ReasonNode field(Sign sign, String text, JobField field, String remark) {
		String meaning = field.field().map(f -> f.meaning()).orElse(field.kind().meaning());
		String calculated = field.field().flatMap(f -> f.calculation())
				.map(c -> NLS.bind(Messages.ReasonTree_calculated, c.formula(), c.source())).orElse(""); //$NON-NLS-1$
		return new ReasonNode(sign, text, remark, Stream.of(meaning, calculated).filter(s -> !s.isEmpty())
				.reduce((a, b) -> a + "\n" + b).orElse(""), Optional.of(new InJob(field)), List.of()); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
