package org.setwright.workbench.cases;

import java.util.List;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.workbench.desk.Evaluation;

/** The check that follows from what has been worked out already: nothing is run for it. */
final class Checks {
	private Checks() {
	}

	/** @return every job of the book against what it expects; jobs that have not been run say why */
	static CaseCheck of(Evaluation evaluation) {
		return new CaseCheck(evaluation.book().jobs().stream().map(job -> evaluation.outcome(job.path()).map(o -> CheckedJob.of(job, o))
				.orElseGet(() -> CheckedJob.notRun(job, evaluation.runs() ? Messages.Checks_notRun : Messages.Checks_mistakes))).toList());
	}

	/** @return {@code check} with the jobs of {@code again} in place of what it says of them */
	static CaseCheck with(CaseCheck check, CaseCheck again) {
		List<CheckedJob> jobs = check.jobs().stream().map(j -> again.jobs().stream().filter(a -> a.job().equals(j.job())).findFirst().orElse(j)).toList();
		return new CaseCheck(jobs);
	}
}
