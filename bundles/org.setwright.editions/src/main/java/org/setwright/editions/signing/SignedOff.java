package org.setwright.editions.signing;

import java.time.OffsetDateTime;
import org.setwright.editions.git.Tag;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.Who;

/**
 * That somebody signed an edition. Immutable.
 *
 * @param mark the name of the annotated tag
 * @param cases what the job cases came to then, in words
 * @param note what the signer added; may be empty
 * @param key whether a key proves who signed
 */
public record SignedOff(Kept edition, String mark, Who by, OffsetDateTime on, String cases, String note, Tag.Signature key) {

	/** @return for example {@code signed by Trine Aasen on 2026-04-02 (not signed with a key)} */
	public String shown() {
		return "signed by " + by.name() + " on " + on.toLocalDate() + " (" + key.words() + ")";
	}
}
