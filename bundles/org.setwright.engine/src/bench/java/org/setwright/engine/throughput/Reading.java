package org.setwright.engine.throughput;

import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Reason;

/** Reads everything an outcome says, as a view that shows all reasons would, in case some of it is worked out only then. */
final class Reading {
	private Reading() {
	}

	/** @return how many letters there were */
	static long all(Outcome outcome) {
		long letters = outcome.settings().size() + outcome.cautions().size() + outcome.startUp().size() + outcome.toFindOut().size();
		for (Firing firing : outcome.firings()) {
			for (Reason reason : firing.reasons()) {
				letters += reason.sentence().length();
			}
		}
		return letters;
	}
}
