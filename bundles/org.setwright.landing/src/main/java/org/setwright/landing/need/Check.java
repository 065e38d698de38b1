package org.setwright.landing.need;

import java.util.Optional;
import org.setwright.trade.catalogue.JobField;

/** Something to be made sure of before a conductor is landed. @param unknown the answer that would settle it, if one does */
public record Check(String sentence, Optional<JobField> unknown) {

	/** @return a check that no single answer of the job settles */
	public static Check of(String sentence) {
		return new Check(sentence, Optional.empty());
	}
}
