package org.setwright.workbench.shell;

import org.eclipse.osgi.util.NLS;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.jobs.JobRow.Standing;
import org.setwright.workbench.jobs.JobRows;

/** What the line at the bottom of the window says about the book. */
final class StatusWords {
	private StatusWords() {
	}

	static String of(DeskState now) {
		if (now.folder().isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		return now.latest().map(StatusWords::of).orElse(Messages.StatusWords_reading);
	}

	private static String of(Evaluation evaluation) {
		if (!evaluation.runs()) {
			return NLS.bind(Messages.StatusWords_stopped, evaluation.errors());
		}
		long differing = JobRows.of(evaluation).stream().filter(r -> r.standing() == Standing.DIFFERS).count();
		String counts = NLS.bind(Messages.StatusWords_counts, evaluation.rules().edition().orElseThrow().rules().size(),
				evaluation.book().jobs().size());
		return differing == 0 ? NLS.bind(Messages.StatusWords_allAsExpected, counts)
				: NLS.bind(Messages.StatusWords_differing, counts, differing);
	}
}
