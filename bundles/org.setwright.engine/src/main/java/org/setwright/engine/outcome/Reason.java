package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Why one condition of a rule held. */
public sealed interface Reason {
	/** @return a sentence a trainer can read out */
	String sentence();

	/**
	 * A fact passed a test.
	 *
	 * @param tested the fields the rule looked at, with what the job says; empty when it only had to be there
	 */
	record OfFact(JobField fact, List<Tested> tested, String sentence) implements Reason {
		public OfFact {
			tested = List.copyOf(tested);
		}
	}

	/** A field a rule looked at. @param wanted what the rule wanted of it, for example "is at least 2" */
	record Tested(JobField field, Answer<Value> actual, String wanted) {
	}

	/** A finding some rules had made. */
	record OfFinding(String finding, List<Firing> madeBy, String sentence) implements Reason {
		public OfFinding {
			madeBy = List.copyOf(madeBy);
		}
	}

	/** Something is certainly not the case. @param looked the places that were looked at */
	record OfAbsence(List<JobField> looked, String sentence) implements Reason {
		public OfAbsence {
			looked = List.copyOf(looked);
		}
	}
}
