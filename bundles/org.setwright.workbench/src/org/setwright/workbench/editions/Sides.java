package org.setwright.workbench.editions;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;

/**
 * Which two states of the book are compared.
 *
 * @param before empty for what there was before the first edition: nothing
 * @param after empty for the work in hand
 */
record Sides(Optional<Kept> before, Optional<Kept> after) {

	/**
	 * One that is picked is compared with the one before it, the work in hand with the last edition; of several, the oldest with
	 * the newest.
	 *
	 * @param picked an empty one is the work in hand
	 * @return empty when nothing is picked
	 */
	static Optional<Sides> of(List<Optional<Kept>> picked, Ledger ledger) {
		List<Optional<Kept>> newestFirst = picked.stream().sorted(Comparator.comparingInt(ledger::place)).toList();
		if (newestFirst.isEmpty()) {
			return Optional.empty();
		}
		Optional<Kept> newest = newestFirst.get(0);
		Optional<Kept> oldest = newestFirst.get(newestFirst.size() - 1);
		return Optional.of(new Sides(newestFirst.size() > 1 ? oldest : newest.isEmpty() ? ledger.last() : ledger.before(newest.get()), newest));
	}

	/** @return what is different */
	BookChanges changes(EditionsOf editions) throws NotDone {
		BookAt was = before.isPresent() ? editions.at(before.get()) : BookAt.NOTHING;
		return editions.changes(was, after.isPresent() ? editions.at(after.get()) : editions.inHand());
	}

	/** @return both, in words */
	String title() {
		return NLS.bind(Messages.Sides_title, before.map(Kept::shown).orElse(Messages.Sides_nothing), after.map(Kept::shown).orElse(Messages.Sides_inHand));
	}
}
