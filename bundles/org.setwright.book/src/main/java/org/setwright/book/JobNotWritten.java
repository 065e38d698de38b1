package org.setwright.book;

/** A job file was left as it is, because the change could not be written without risk to what it says. */
public final class JobNotWritten extends Exception {
	private static final long serialVersionUID = 1;
	private final transient Problem problem;

	JobNotWritten(Problem problem) {
		super(problem.what() + " " + problem.remedy());
		this.problem = problem;
	}

	/** @return why, and what to do */
	public Problem problem() {
		return problem;
	}
}
