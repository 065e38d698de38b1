package org.setwright.workbench.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.Inquiry;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.whynot.Blocker;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.reasons.ReasonNode.InRules;
import org.setwright.workbench.reasons.ReasonNode.Sign;

/** Turns what became of rules on a job into an outline: the rule, what is in its way, the answers to look at. */
final class WhyNotTree {
	private final Inquiry inquiry;

	private WhyNotTree(Inquiry inquiry) {
		this.inquiry = inquiry;
	}

	/** @return the answer to {@code question} */
	static List<ReasonNode> of(Question question, Inquiry inquiry) {
		List<WhyNot> all = question.whyNot(inquiry);
		WhyNotTree tree = new WhyNotTree(inquiry);
		return all.isEmpty() ? List.of(note(NLS.bind(Messages.WhyNotTree_nobody, question.goal()))) : all.stream().map(why -> tree.rule(why, question)).toList();
	}

	/** @return what became of one rule */
	static ReasonNode of(WhyNot why, Inquiry inquiry) {
		return new WhyNotTree(inquiry).rule(why);
	}

	/** A rule that speaks may say something else. */
	private ReasonNode rule(WhyNot why, Question question) {
		ReasonNode line = rule(why);
		List<ReasonNode> children = new ArrayList<>();
		if (question instanceof Question.OfValue asked) {
			inquiry.outcome().setting(asked.setting()).stream().flatMap(s -> s.proposals().stream()).filter(p -> p.rule() == why.rule())
					.forEach(p -> children.add(note(NLS.bind(Messages.WhyNotTree_says, p.value().text()))));
		}
		children.addAll(line.children());
		return new ReasonNode(line.sign(), line.text(), line.remark(), line.detail(), line.place(), children);
	}

	private ReasonNode rule(WhyNot why) {
		List<ReasonNode> children = new ArrayList<>();
		why.outrankedBy().forEach(p -> children.add(outrankedBy(p)));
		why.blockers().forEach(b -> children.add(blocker(b)));
		why.heldBy().stream().map(JobField::label).sorted().distinct().forEach(l -> why.heldBy().stream().filter(f -> f.label().equals(l))
				.findFirst().ifPresent(f -> children.add(ReasonTree.field(Sign.UNKNOWN, NLS.bind(Messages.WhyNotTree_heldBy, l), f, "")))); //$NON-NLS-1$
		if (why.blockers().isEmpty()) {
			inquiry.outcome().firings().stream().filter(f -> f.rule() == why.rule()).forEach(f -> children.addAll(ReasonTree.conditions(f)));
		}
		return ReasonTree.rule(sign(why.status()), NLS.bind(Messages.WhyNotTree_rule, why.rule().name(), why.status().words()), why.rule(), children);
	}

	private static Sign sign(WhyNot.Status status) {
		return switch (status) {
			case FIRED -> Sign.RULE;
			case OUTRANKED -> Sign.OUTRANKED;
			case SILENT -> Sign.NONE;
			case HELD_OPEN -> Sign.HELD_OPEN;
		};
	}

	private ReasonNode outrankedBy(Proposal proposal) {
		return ReasonTree.rule(Sign.RULE, NLS.bind(Messages.WhyNotTree_outrankedBy,
				new Object[] { proposal.rule().name(), proposal.setting().label(), proposal.value().text() }), proposal.rule(), List.of());
	}

	private ReasonNode blocker(Blocker blocker) {
		List<ReasonNode> children = new ArrayList<>();
		blocker.tested().forEach(t -> children.add(ReasonTree.tested(t)));
		if (blocker.tested().isEmpty()) {
			blocker.looked().forEach(f -> children.add(ReasonTree.field(Sign.FACT, f.label(), f, ""))); //$NON-NLS-1$
		}
		blocker.makers().forEach(m -> children.add(rule(m)));
		Optional<ReasonNode.Place> place = Optional.of(new InRules(blocker.condition().at()));
		return new ReasonNode(Sign.CONDITION, blocker.sentence(), "", blocker.sentence(), place, children); //$NON-NLS-1$
	}

	/** @return a line that only says something */
	static ReasonNode note(String words) {
		return new ReasonNode(Sign.NOTE, words, "", words, Optional.empty(), List.of()); //$NON-NLS-1$
	}
}
