package org.setwright.check.cases;

import org.setwright.book.Position;

/** One thing that a job case asks, or could ask, of what the job comes to. Immutable. */
public sealed interface Point permits SettingPoint, ItemPoint {

	/** @return how it stands */
	Standing standing();

	/** @return what it is about, in the words of a job file; unique within the job case */
	String what();

	/** @return what is expected, in the words of a job file; empty when nothing is */
	String expected();

	/** @return what it came to, in the same words */
	String came();

	/** @return where the expectation stands; the whole file when nothing is expected */
	Position at();

	/** @return whether it came to what is expected */
	default boolean met() {
		return standing() == Standing.MET;
	}

	/** @return both in one sentence, without a full stop: "expected 2, came to 1" */
	default String sentence() {
		return switch (standing()) {
			case MET -> "came to " + came() + ", as expected";
			case NOT_MET -> "expected " + expected() + ", came to " + came();
			case NOT_ASKED -> "came to " + came() + "; nothing is expected";
		};
	}
}
