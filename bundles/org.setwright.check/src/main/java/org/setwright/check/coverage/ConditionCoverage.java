package org.setwright.check.coverage;

import org.setwright.book.Position;

/**
 * How one condition of a rule, or one test of a pattern, came out on the saved jobs. A job on which an earlier condition
 * left nothing to test, or on which the answer is unknown, counts on neither side.
 *
 * @param words the condition read aloud
 * @param held on how many jobs it held
 * @param failed on how many jobs it was among the things that kept the rule silent
 */
public record ConditionCoverage(String words, Position at, int held, int failed) {
	/** @return whether it has been seen to hold and to fail */
	public boolean bothWays() {
		return held > 0 && failed > 0;
	}
}
