package org.setwright.engine.outcome;

import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.JobField;

/**
 * A place of the job that something rests on.
 *
 * @param said what stands there, in words: "8 kW", "unknown", "none"
 * @param known whether somebody has said it, or it could be worked out
 * @param calculation how it was worked out; empty when it is stated in the job
 */
public record Basis(JobField place, String said, boolean known, Optional<Calculation> calculation) {

	/**
	 * How an answer was worked out.
	 *
	 * @param formula in words a trainer can read out
	 * @param source document, edition and clause, or "common practice"
	 * @param from what it was worked out from; again with their own calculations, down to what the job states
	 */
	public record Calculation(String formula, String source, List<Basis> from) {
		public Calculation {
			from = List.copyOf(from);
		}
	}

	/** @return for example "building: floor area is 1500 ft2" */
	public String sentence() {
		return place.label() + (place.field().isPresent() ? " is " : ": ") + said;
	}
}
