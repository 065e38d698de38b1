package org.setwright.command.answer;

/** What the program tells the script that started it. */
public final class ExitCode {
	/** Done, and nothing to complain about. */
	public static final int FINE = 0;
	/** Done; the book has errors, or a job does not come to what it expects. */
	public static final int PROBLEMS = 1;
	/** The words make no sense; nothing was done. */
	public static final int WRONG_USAGE = 2;
	/** Something outside the book prevented it; nothing was done. */
	public static final int COULD_NOT_RUN = 3;

	private ExitCode() {
	}
}
