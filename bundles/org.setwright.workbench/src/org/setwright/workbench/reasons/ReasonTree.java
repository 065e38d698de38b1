package org.setwright.workbench.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.explaining.ReadAloud;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.reasons.ReasonNode.InJob;
import org.setwright.workbench.reasons.ReasonNode.InRules;
import org.setwright.workbench.reasons.ReasonNode.Sign;

/** Turns what a setting comes to into an outline: setting, proposals, rules, conditions, findings, job fields. */
public final class ReasonTree {
	private ReasonTree() {
	}

	/** @return the outline, strongest proposal first, below the setting itself */
	public static ReasonNode of(SettingOutcome outcome) {
		List<ReasonNode> children = new ArrayList<>();
		if (!outcome.proposals().isEmpty()) {
			outcome.deciding().forEach(p -> children.add(proposal(p, Sign.RULE)));
			outcome.agreeing().forEach(p -> children.add(proposal(p, Sign.RULE)));
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

	private static ReasonNode proposal(Proposal proposal, Sign sign) {
		String said = sign == Sign.OUTRANKED ? Messages.ReasonTree_outranked : Messages.ReasonTree_proposes;
		return rule(sign, NLS.bind(said, proposal.rule().name(), proposal.value().text()), proposal.rule(),
				conditions(proposal.firing()));
	}

	static ReasonNode rule(Sign sign, String text, Rule rule, List<ReasonNode> conditions) {
		return new ReasonNode(sign, text, rule.authority().label(), detail(rule), Optional.of(new InRules(rule.at())),
				conditions);
	}

	private static String detail(Rule rule) {
		return NLS.bind(Messages.ReasonTree_ruleDetail, new Object[] { ReadAloud.of(rule).text(), rule.authority().label(),
				rule.authority().meaning(), rule.at() });
	}

	static List<ReasonNode> conditions(Firing firing) {
		return firing.rule().when().isEmpty() ? List.of(WhyNotTree.note(Messages.ReasonTree_always))
				: firing.reasons().stream().map(ReasonTree::condition).toList();
	}

	private static ReasonNode condition(Reason reason) {
		if (reason instanceof Reason.OfFact fact) {
			return new ReasonNode(Sign.CONDITION, fact.sentence(), "", fact.sentence(), //$NON-NLS-1$
					Optional.of(new InJob(fact.fact().place())), fact.tested().stream().map(ReasonTree::tested).toList());
		} else if (reason instanceof Reason.OfFinding finding) {
			return new ReasonNode(Sign.FINDING, finding.sentence(), "", finding.sentence(), Optional.empty(), //$NON-NLS-1$
					finding.madeBy().stream().map(ReasonTree::finder).toList());
		}
		Reason.OfAbsence absence = (Reason.OfAbsence) reason;
		return new ReasonNode(Sign.CONDITION, absence.sentence(), "", absence.sentence(), Optional.empty(), //$NON-NLS-1$
				Stream.concat(absence.looked().stream().map(ReasonTree::basis), absence.findings().stream().flatMap(ReasonTree::asked)).toList());
	}

	private static Stream<ReasonNode> asked(Reason.AskedFinding asked) {
		return Stream.concat(asked.madeBy().stream().map(ReasonTree::finder), asked.silent().stream().map(s -> rule(Sign.NONE,
				NLS.bind(Messages.ReasonTree_silent, s.rule().name()), s.rule(), s.looked().stream().map(ReasonTree::basis).toList())));
	}

	/** A place with what stands there, and below it what that was worked out from. */
	private static ReasonNode basis(Basis basis) {
		return basis(basis, ""); //$NON-NLS-1$
	}

	private static ReasonNode basis(Basis basis, String remark) {
		Sign sign = basis.calculation().isPresent() ? Sign.CALCULATED : basis.known() ? Sign.FACT : Sign.UNKNOWN;
		ReasonNode line = field(sign, NLS.bind(Messages.ReasonTree_fact, basis.place().label(), basis.said()), basis.place(), remark);
		List<ReasonNode> from = basis.calculation().map(c -> Stream.concat(
				Stream.of(WhyNotTree.note(NLS.bind(Messages.ReasonTree_workedOut, c.formula(), c.source()))), c.from().stream().map(ReasonTree::basis)).toList())
				.orElse(List.of());
		return new ReasonNode(line.sign(), line.text(), line.remark(), line.detail(), line.place(), from);
	}

	private static ReasonNode finder(Firing firing) {
		return rule(Sign.RULE, NLS.bind(Messages.ReasonTree_foundBy, firing.rule().name()), firing.rule(),
				conditions(firing));
	}

	static ReasonNode tested(Reason.Tested tested) {
		return basis(tested.basis(), NLS.bind(Messages.ReasonTree_wanted, tested.wanted()));
	}

	private static ReasonNode heldOpen(HeldOpen held) {
		Set<JobField> unknowns = held.by();
		return rule(Sign.HELD_OPEN, NLS.bind(Messages.ReasonTree_heldOpen, held.rule().name()), held.rule(),
				unknowns.stream().sorted((a, b) -> a.label().compareTo(b.label()))
						.map(f -> field(Sign.UNKNOWN, f, Messages.ReasonTree_notLookedUp)).toList());
	}

	private static ReasonNode field(Sign sign, JobField field, String remark) {
		return field(sign, field.label(), field, remark);
	}

	static ReasonNode field(Sign sign, String text, JobField field, String remark) {
		String meaning = field.field().map(f -> f.meaning()).orElse(field.kind().meaning());
		String calculated = field.field().flatMap(f -> f.calculation())
				.map(c -> NLS.bind(Messages.ReasonTree_calculated, c.formula(), c.source())).orElse(""); //$NON-NLS-1$
		return new ReasonNode(sign, text, remark, Stream.of(meaning, calculated).filter(s -> !s.isEmpty())
				.reduce((a, b) -> a + "\n" + b).orElse(""), Optional.of(new InJob(field)), List.of()); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
