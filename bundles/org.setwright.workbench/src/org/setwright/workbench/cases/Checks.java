package org.setwright.workbench.cases;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
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

	/** @return the keys of the points of {@code now} that came to something else {@code before}, or were not there */
	static Set<String> changed(CaseCheck before, CaseCheck now) {
		Map<String, String> came = new HashMap<>();
		before.jobs().forEach(job -> job.points().forEach(p -> came.put(new CaseLine.OfPoint(job, p).key(), standing(p))));
		return now.jobs().stream().flatMap(job -> job.points().stream().map(p -> new CaseLine.OfPoint(job, p)))
				.filter(line -> !standing(line.point()).equals(came.get(line.key()))).map(CaseLine::key).collect(Collectors.toSet());
	}

	private static String standing(Point point) {
		return point.standing() + "\n" + point.came(); //$NON-NLS-1$
	}
}
