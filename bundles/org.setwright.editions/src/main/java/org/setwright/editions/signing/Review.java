package org.setwright.editions.signing;

import java.util.List;
import java.util.Optional;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.kept.Kept;

/**
 * What there is to review before an edition is signed. Immutable.
 *
 * @param last the sign-off it is compared with; empty when nothing was ever signed: then everything is new
 * @param changes since then
 * @param matters everything that was remarked, settled or not
 */
public record Review(Kept edition, Optional<SignedOff> last, BookChanges changes, List<Matter> matters) {
	public Review {
		matters = List.copyOf(matters);
	}

	/** @return what was remarked on the rule that {@code change} is about, by its name now or before */
	public List<Matter> on(RuleChange change) {
		return matters.stream().filter(m -> m.about() instanceof About.OfRule rule
				&& (change.after().filter(r -> r.name().equals(rule.name())).isPresent() || change.before().filter(r -> r.name().equals(rule.name()))
						.isPresent())).toList();
	}

	/** @return the matters that are still open */
	public List<Matter> open() {
		return matters.stream().filter(Matter::open).toList();
	}
}
