package org.setwright.editions.impact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.impact.Telling.Point;
import org.setwright.engine.Amendment;
import org.setwright.engine.Rehearsal;

/** Finds for one job which changes are responsible for a difference: by making them one by one, and else as few as will do. */
final class Blame {
	private final Mixes mixes;
	private final Rehearsal before;
	private final Optional<Rehearsal> otherAnswers;
	private final int all;
	private final Map<BitSet, Optional<Map<Point, String>>> tried = new HashMap<>();

	/**
	 * @param before the job with its earlier answers, under the earlier rules
	 * @param otherAnswers the same rules with its later answers, when these differ
	 */
	Blame(Mixes mixes, Rehearsal before, Optional<Rehearsal> otherAnswers) {
		this.mixes = mixes;
		this.before = before;
		this.otherAnswers = otherAnswers;
		all = mixes.changes().size() + (otherAnswers.isPresent() ? 1 : 0);
	}

	/** @param after what {@code point} comes to with all changes @return each change that brings it about alone, or the fewest that do together */
	List<Cause> causes(Point point, String after) {
		List<Cause> alone = new ArrayList<>();
		for (int i = 0; i < all; i++) {
			BitSet one = new BitSet();
			one.set(i);
			if (comesTo(one, point, after)) {
				alone.add(new Cause(List.of(culprit(i))));
			}
		}
		if (!alone.isEmpty()) {
			return alone;
		}
		BitSet needed = new BitSet();
		needed.set(0, all);
		if (!comesTo(needed, point, after)) {
			return List.of();
		}
		for (int i = 0; i < all; i++) {
			needed.clear(i);
			if (!comesTo(needed, point, after)) {
				needed.set(i);
			}
		}
		return List.of(new Cause(needed.stream().mapToObj(this::culprit).toList()));
	}

	private Culprit culprit(int change) {
		return change < mixes.changes().size() ? Culprit.of(mixes.changes().get(change)) : Culprit.ANSWERS;
	}

	private boolean comesTo(BitSet chosen, Point point, String wanted) {
		Optional<Map<Point, String>> told = tried.get(chosen);
		if (told == null) {
			told = tried(chosen);
			tried.put((BitSet) chosen.clone(), told);
		}
		return told.isPresent() && told.get().getOrDefault(point, Telling.missing(point)).equals(wanted);
	}

	/** @return empty when these rules cannot be tried together, because they would go round in a circle */
	private Optional<Map<Point, String>> tried(BitSet chosen) {
		BitSet rules = (BitSet) chosen.clone();
		rules.clear(mixes.changes().size());
		Amendment amendment = mixes.with(rules);
		Rehearsal job = chosen.get(mixes.changes().size()) ? otherAnswers.orElseThrow() : before;
		return amendment.sound() ? Optional.of(Telling.of(job.under(amendment).outcome())) : Optional.empty();
	}
}
