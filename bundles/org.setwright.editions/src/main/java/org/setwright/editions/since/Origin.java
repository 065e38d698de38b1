package org.setwright.editions.since;

import java.util.List;
import java.util.Optional;
import org.setwright.editions.impact.Cause;
import org.setwright.editions.kept.Kept;

/**
 * An edition since which a job comes to a value.
 *
 * @param before the edition before it; empty when the book has said so from its first edition that can be run
 * @param valueBefore what the job came to under that; empty likewise
 * @param causes the changes responsible; several when each alone would do it
 */
public record Origin(Kept edition, Optional<Kept> before, String valueBefore, List<Cause> causes) {
	public Origin {
		causes = List.copyOf(causes);
	}
}
