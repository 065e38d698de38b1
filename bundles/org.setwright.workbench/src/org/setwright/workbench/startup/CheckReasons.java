package org.setwright.workbench.startup;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.StartUpCheck;

/** Says which rules ask for a check, on whose authority, and on which answers of the job they rest. */
final class CheckReasons {
	private CheckReasons() {
	}

	/** @return the reasons behind {@code check}, a line for each */
	static String of(StartUpCheck check) {
		List<String> lines = new ArrayList<>();
		for (Rule rule : check.saidBy()) {
			lines.add(NLS.bind(Messages.CheckReasons_rule,
					new Object[] { rule.name(), rule.authority().label(), rule.because(), rule.source() }));
			check.firings().stream().filter(f -> f.rule() == rule).map(Firing::reasons).flatMap(List::stream)
					.map(Reason::sentence).distinct().forEach(s -> lines.add("\u2022 " + s)); //$NON-NLS-1$
		}
		if (!check.certain()) {
			lines.add(Messages.CheckReasons_perhaps);
		}
		if (!check.toFindOut().isEmpty()) {
			lines.add(NLS.bind(Messages.CheckReasons_findOut, Sheet.findOut(check)));
		}
		return String.join("\n", lines); //$NON-NLS-1$
	}
}
