package org.setwright.workbench.aloud;

import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.explaining.ReadAloud;
import org.setwright.engine.language.Rule;
import org.setwright.workbench.desk.DeskState;

/**
 * What the view shows.
 *
 * @param title the rule's name; empty when there is none
 * @param remark what stands beside it; may be empty
 * @param sentences in the order they are read out
 */
record Reading(String title, String remark, List<String> sentences) {
	/** No rule is being looked at. */
	static final Reading NONE = new Reading("", Messages.ReadAloudView_none, List.of()); //$NON-NLS-1$

	/**
	 * @param now what is being looked at
	 * @param before what was shown last
	 * @return the rule being looked at; what was shown last, with a remark, while the book cannot run
	 */
	static Reading of(DeskState now, Reading before) {
		if (now.rule().isEmpty()) {
			return NONE;
		}
		String name = now.rule().get();
		if (now.edition().isEmpty()) {
			return before.title().equals(name) ? new Reading(name, Messages.ReadAloudView_lastGood, before.sentences()) : NONE;
		}
		Optional<Rule> rule = now.edition().get().rules().stream().filter(r -> r.name().equals(name)).findFirst();
		return rule.map(r -> new Reading(name, "", ReadAloud.of(r).sentences())) //$NON-NLS-1$
				.orElseGet(() -> new Reading("", NLS.bind(Messages.ReadAloudView_noRule, name), List.of())); //$NON-NLS-1$
	}

	/** @return all of it, a blank line between paragraphs */
	String text() {
		StringBuilder text = new StringBuilder(remark);
		sentences.forEach(s -> text.append(text.isEmpty() ? "" : "\n\n").append(s)); //$NON-NLS-1$ //$NON-NLS-2$
		return text.toString();
	}
}
