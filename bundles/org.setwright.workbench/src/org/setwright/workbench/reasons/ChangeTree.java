package org.setwright.workbench.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.change.Alternative;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.change.Sensitivity;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.reasons.ReasonNode.Sign;

/** Turns changes found into an outline: each alternative, its changes, and what else they would change. */
final class ChangeTree {
	private ChangeTree() {
	}

	/** @return what would have to be different for {@code goal} */
	static ReasonNode of(String goal, Alternatives found, Job job) {
		List<ReasonNode> children = new ArrayList<>();
		found.found().forEach(a -> children.add(alternative(a, job)));
		if (children.isEmpty()) {
			children.add(WhyNotTree.note(found.largest() == 0 ? Messages.ChangeTree_nothingNeeded : found.nothing(goal)));
		} else if (!found.whole()) {
			children.add(WhyNotTree.note(Messages.ChangeTree_ended));
		}
		String text = NLS.bind(Messages.ChangeTree_whatWould, goal);
		return new ReasonNode(Sign.CONDITION, text, "", NLS.bind(Messages.ChangeTree_tried, found.largest()), Optional.empty(), children); //$NON-NLS-1$
	}

	private static ReasonNode alternative(Alternative alternative, Job job) {
		List<ReasonNode> children = new ArrayList<>();
		alternative.changes().forEach(c -> children.add(ReasonTree.field(Sign.FACT, c.sentence(job), c.place(), ""))); //$NON-NLS-1$
		if (!alternative.alsoChanges().isEmpty()) {
			children.add(WhyNotTree.note(NLS.bind(Messages.ChangeTree_alsoChanges, labels(alternative.alsoChanges()))));
		}
		String text = alternative.changes().stream().map(c -> c.sentence(job)).collect(Collectors.joining(Messages.ChangeTree_and));
		return new ReasonNode(alternative.onSite() ? Sign.SETTLED : Sign.PERHAPS, text,
				alternative.onSite() ? Messages.ChangeTree_onSite : Messages.ChangeTree_otherJob,
				alternative.onSite() ? Messages.ChangeTree_onSiteExplained : Messages.ChangeTree_otherJobExplained, Optional.empty(), children);
	}

	/** @return which answers to check first */
	static ReasonNode of(List<Sensitivity> matters, Job job) {
		List<ReasonNode> children = matters.stream().map(m -> matter(m, job)).toList();
		return new ReasonNode(Sign.CONDITION, Messages.ChangeTree_checkFirst, "", Messages.ChangeTree_checkFirstExplained, Optional.empty(), //$NON-NLS-1$
				children.isEmpty() ? List.of(WhyNotTree.note(Messages.ChangeTree_nothingMatters)) : children);
	}

	private static ReasonNode matter(Sensitivity matter, Job job) {
		String would = NLS.bind(Messages.ChangeTree_wouldChange, matter.instead().sentence(job), labels(matter.changes()));
		ReasonNode line = ReasonTree.field(Sign.FACT, matter.place().label(), matter.place(), NLS.bind(Messages.ChangeTree_settings, matter.changes().size()));
		return new ReasonNode(line.sign(), line.text(), line.remark(), would, line.place(), List.of(WhyNotTree.note(would)));
	}

	private static String labels(List<Setting> settings) {
		return settings.stream().map(Setting::label).collect(Collectors.joining(", ")); //$NON-NLS-1$
	}
}
