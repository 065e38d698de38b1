package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.engine.language.Rule;
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
	 * @param tested the fields by which it passed, with what the job says; empty when it only had to be there
	 */
	record OfFact(Basis fact, List<Tested> tested, String sentence) implements Reason {
		public OfFact {
			tested = List.copyOf(tested);
		}
	}

	/**
	 * A field a rule looked at.
	 *
	 * @param basis the field, what stands there, and how it was worked out if it was
	 * @param actual what stands there
	 * @param wanted what the rule wanted of it, for example "is at least 2"
	 */
	record Tested(Basis basis, Answer<Value> actual, String wanted) {
		/** @return the field */
		public JobField field() {
			return basis.place();
		}
	}

	/** A finding some rules had made. */
	record OfFinding(String finding, List<Firing> madeBy, String sentence) implements Reason {
		public OfFinding {
			madeBy = List.copyOf(madeBy);
		}
	}

	/**
	 * Something is certainly not the case, or is the case by way of some fact.
	 *
	 * @param looked the places that were looked at
	 * @param findings the findings asked for
	 */
	record OfAbsence(List<Basis> looked, List<AskedFinding> findings, String sentence) implements Reason {
		public OfAbsence {
			looked = List.copyOf(looked);
			findings = List.copyOf(findings);
		}
	}

	/** A finding asked for. @param madeBy the firings that made it @param silent the rules that could have made it too */
	record AskedFinding(String finding, List<Firing> madeBy, List<SilentMaker> silent) {
		public AskedFinding {
			madeBy = List.copyOf(madeBy);
			silent = List.copyOf(silent);
		}
	}

	/** A rule that did not make a finding. @param looked what in the job decided that */
	record SilentMaker(Rule rule, List<Basis> looked) {
		public SilentMaker {
			looked = List.copyOf(looked);
		}
	}
}
