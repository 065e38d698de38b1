package org.setwright.workbench.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Type;

/** Which job it is, and how far it is decided. */
final class Headline {
	private final Label name;
	private final Label summary;

	Headline(Composite parent) {
		Composite lines = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(2, 0).spacing(0, 3).applyTo(lines);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(lines);
		name = new Label(lines, SWT.NONE);
		Type.heading(name, 3);
		Type.ink(name, Palette.Ink.HEADING);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(name);
		summary = new Label(lines, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(summary);
	}

	void show(DeskState now) {
		name.setText(now.jobCase().map(JobCase::name).orElse(now.job().orElse(Messages.Headline_noJob)).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		summary.setText(said(now));
	}

	/** @return what the job comes to in numbers, or came to before the rules could not run any more, or why nothing is shown */
	static String said(DeskState now) {
		Optional<String> counts = now.lastOutcome().map(Headline::counts);
		return counts.map(c -> now.outcome().isPresent() ? c : NLS.bind(Messages.Headline_fromBefore, c, now.latest().orElseThrow().errors())).orElseGet(() -> why(now));
	}

	/** @return for example "12 settled, 1 disputed, 1 gap" */
	static String counts(Outcome outcome) {
		List<String> parts = new ArrayList<>();
		part(parts, Messages.Headline_settled, outcome.count(State.SETTLED));
		part(parts, Messages.Headline_disputed, outcome.count(State.DISPUTED));
		part(parts, Messages.Headline_gaps, outcome.count(State.GAP));
		part(parts, Messages.Headline_perhaps, outcome.count(State.PERHAPS));
		return parts.isEmpty() ? Messages.Headline_nothing : String.join(Messages.Headline_between, parts);
	}

	private static void part(List<String> parts, String words, long count) {
		if (count > 0) {
			parts.add(NLS.bind(words, count));
		}
	}

	/** @return why there is no set-up to show */
	static String why(DeskState now) {
		if (now.folder().isEmpty()) {
			return Messages.Headline_noBook;
		} else if (now.latest().isEmpty()) {
			return Messages.Headline_reading;
		} else if (!now.latest().get().runs()) {
			return NLS.bind(Messages.Headline_rulesFaulty, now.latest().get().errors());
		}
		Optional<String> faulty = now.job().filter(j -> now.jobCase().isEmpty());
		return faulty.isPresent() ? Messages.Headline_jobFaulty : Messages.Headline_pickJob;
	}
}
