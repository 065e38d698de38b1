package org.setwright.book;

import java.util.List;

/**
 * What the text of a job file says.
 *
 * @param job what could be read; complete exactly when the text is sound
 * @param nameAt where its name stands; the whole file when it has none
 * @param problems what is wrong, by position
 */
public record JobText(JobCase job, Position nameAt, List<Problem> problems) {
	public JobText {
		problems = List.copyOf(problems);
	}

	/** @return whether every word of it was understood, so that the job may be run */
	public boolean sound() {
		return problems.stream().noneMatch(p -> p.severity() == Problem.Severity.ERROR);
	}
}
