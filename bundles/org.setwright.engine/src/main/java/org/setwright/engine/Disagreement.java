package org.setwright.engine;

/**
 * The rule engine and the independent evaluator of the same rules came to different results on a job. It must never
 * happen; if it does, there is no answer rather than a doubtful one.
 */
public final class Disagreement extends RuntimeException {
	private static final long serialVersionUID = 1;

	Disagreement(String rule) {
		super("Two independent evaluations of the rule \"" + rule + "\" differ on this job, so no set-up is given. "
				+ "Please report it together with the rule and the job.");
	}
}
