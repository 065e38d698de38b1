package org.setwright.workbench.counts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.Standing;
import org.setwright.writing.live.RuleTally;
import org.setwright.writing.live.Tally;

/** Says in words what becomes of a rule on the saved jobs. */
final class TallyWords {
	private static final String BETWEEN = " \u00b7 "; //$NON-NLS-1$

	private TallyWords() {
	}

	/** @return the line above the rule called {@code rule}; empty while nothing has been counted */
	static Optional<String> line(Tally tally, String rule) {
		if (tally == Tally.NONE) {
			return Optional.empty();
		}
		return Optional.of(tally.of(rule).map(t -> (t.stale() ? stale(tally) : "") + counts(t)).orElse(Messages.TallyWords_never)); //$NON-NLS-1$
	}

	private static String stale(Tally tally) {
		return (tally.stale().isPresent() ? Messages.TallyWords_staleBook : Messages.TallyWords_staleRule) + BETWEEN;
	}

	private static String counts(RuleTally tally) {
		List<String> parts = new ArrayList<>();
		if (tally.speaks() == 0) {
			parts.add(Messages.TallyWords_unspoken);
		}
		add(parts, tally, Standing.STANDS, Messages.TallyWords_stands, Messages.TallyWords_standsOnOne);
		add(parts, tally, Standing.OUTRANKED, Messages.TallyWords_outranked, Messages.TallyWords_outrankedOnOne);
		add(parts, tally, Standing.DISPUTED, Messages.TallyWords_disputed, Messages.TallyWords_disputedOnOne);
		add(parts, tally, Standing.HELD_OPEN, Messages.TallyWords_heldOpen, Messages.TallyWords_heldOpenOnOne);
		add(parts, tally, Standing.SILENT, Messages.TallyWords_silent, Messages.TallyWords_silentOnOne);
		return String.join(BETWEEN, parts);
	}

	private static void add(List<String> parts, RuleTally tally, Standing standing, String many, String one) {
		int count = tally.count(standing);
		if (count > 0) {
			parts.add(count == 1 ? one : NLS.bind(many, count));
		}
	}

	/** @return how the jobs on which this becomes of a rule are headed in a list */
	static String heading(Standing standing, int jobs) {
		return NLS.bind(switch (standing) {
			case STANDS -> Messages.TallyWords_headStands;
			case OUTRANKED -> Messages.TallyWords_headOutranked;
			case DISPUTED -> Messages.TallyWords_headDisputed;
			case HELD_OPEN -> Messages.TallyWords_headHeldOpen;
			case SILENT -> Messages.TallyWords_headSilent;
		}, jobs);
	}
}
