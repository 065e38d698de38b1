package org.setwright.workbench.reasons;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.Inquiry;
import org.setwright.engine.change.Differences;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.whynot.Parting;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.reasons.ReasonNode.Sign;

/** Turns the differences between two jobs into an outline: each setting, the rules that decide on one job only, and why. */
final class CompareTree {
	private CompareTree() {
	}

	/** @param first the setting to begin with, when it differs @return one line for each setting that differs */
	static List<ReasonNode> of(Inquiry here, Inquiry there, Optional<Setting> first) {
		List<Setting> differing = Differences.between(here.outcome(), there.outcome());
		Set<Setting> inOrder = new LinkedHashSet<>(first.filter(differing::contains).stream().toList());
		inOrder.addAll(differing);
		List<ReasonNode> lines = inOrder.stream().map(s -> setting(here.comparedWith(there, s), here, there)).toList();
		return lines.isEmpty() ? List.of(WhyNotTree.note(Messages.CompareTree_same)) : lines;
	}

	private static ReasonNode setting(Parting parting, Inquiry here, Inquiry there) {
		List<ReasonNode> children = new ArrayList<>();
		parting.decidesHere().forEach(p -> children.add(part(Messages.CompareTree_here, p, there)));
		parting.decidesThere().forEach(p -> children.add(part(Messages.CompareTree_there, p, here)));
		String text = NLS.bind(Messages.CompareTree_setting, new Object[] { parting.setting().label(), said(parting.here()), said(parting.there()) });
		return new ReasonNode(Sign.NOTE, text, "", parting.setting().meaning(), Optional.empty(), children); //$NON-NLS-1$
	}

	private static ReasonNode part(String where, Parting.Part part, Inquiry other) {
		List<ReasonNode> children = new ArrayList<>();
		children.add(part.onOther().status() == WhyNot.Status.FIRED ? WhyNotTree.note(Messages.CompareTree_speaksToo)
				: withoutPlaces(WhyNotTree.of(part.onOther(), other)));
		ReasonTree.conditions(part.firing()).forEach(c -> children.add(withoutPlaces(c)));
		return ReasonTree.rule(Sign.RULE, NLS.bind(where, part.firing().rule().name()), part.firing().rule(), children);
	}

	/** Two jobs are spoken of, so no answer leads to the one being looked at. */
	private static ReasonNode withoutPlaces(ReasonNode node) {
		return new ReasonNode(node.sign(), node.text(), node.remark(), node.detail(), node.place().filter(ReasonNode.InRules.class::isInstance),
				node.children().stream().map(CompareTree::withoutPlaces).toList());
	}

	private static String said(Optional<SettingOutcome> outcome) {
		return outcome.map(o -> switch (o.state()) {
			case SETTLED -> o.value().orElseThrow().text();
			case DISPUTED -> Messages.ReasonTree_disputed;
			case GAP -> Messages.ReasonTree_gap;
			case PERHAPS -> Messages.ReasonTree_perhaps;
		}).orElse(Messages.CompareTree_notNeeded);
	}
}
