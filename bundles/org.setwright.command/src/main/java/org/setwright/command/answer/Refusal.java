package org.setwright.command.answer;

/** The words cannot be followed; the message is one or two sentences for the person who typed them. */
public final class Refusal extends RuntimeException {
	private static final long serialVersionUID = 1L;
	private final int exitCode;

	private Refusal(int exitCode, String sentence) {
		super(sentence);
		this.exitCode = exitCode;
	}

	/** @return a refusal because the words make no sense here */
	public static Refusal wrongUsage(String sentence) {
		return new Refusal(ExitCode.WRONG_USAGE, sentence);
	}

	/** @return a refusal because something outside prevents it */
	public static Refusal couldNotRun(String sentence) {
		return new Refusal(ExitCode.COULD_NOT_RUN, sentence);
	}

	/** @return one of {@link ExitCode} */
	public int exitCode() {
		return exitCode;
	}
}
