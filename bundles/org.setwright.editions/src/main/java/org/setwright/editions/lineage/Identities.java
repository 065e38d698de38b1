package org.setwright.editions.lineage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.git.EditionLog;
import org.setwright.editions.kept.EditionId;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.editions.written.WrittenRule;

/** Gives every rule a name that stays the same through all editions, by following it from each to the next. Thread-safe. */
public final class Identities {
	private final Shelf shelf;
	private final EditionLog log;
	private final Map<EditionId, Map<WrittenRule, String>> known = new HashMap<>();

	/** For the editions of {@code log}. */
	public Identities(Shelf shelf, EditionLog log) {
		this.shelf = shelf;
		this.log = log;
	}

	/** @return the editions it follows rules through */
	public EditionLog log() {
		return log;
	}

	/**
	 * @param last the edition that the work in hand comes from
	 * @return the lasting name of every rule of {@code book}; of none that came from no edition of the log
	 */
	public synchronized Map<WrittenRule, String> of(BookAt book, Optional<Kept> last) throws NotDone {
		if (book.edition().isPresent()) {
			return of(book.edition().get());
		} else if (last.isEmpty() || book.rules().isEmpty()) {
			return Map.of();
		}
		Map<WrittenRule, String> names = new HashMap<>();
		inherit(last.get(), book, names);
		return names;
	}

	private Map<WrittenRule, String> of(Kept wanted) throws NotDone {
		List<Kept> newestFirst = log.leadingTo(wanted.id());
		for (int i = newestFirst.size() - 1; i >= 0; i--) {
			Kept edition = newestFirst.get(i);
			if (!known.containsKey(edition.id())) {
				Map<WrittenRule, String> names = new HashMap<>();
				for (EditionId parent : edition.parents()) {
					inherit(log.edition(parent).orElseThrow(), shelf.at(edition), names);
				}
				shelf.at(edition).rules().forEach(r -> names.putIfAbsent(r, edition.id().hash() + " " + r.file() + " " + r.start()));
				known.put(edition.id(), names);
			}
		}
		return known.getOrDefault(wanted.id(), Map.of());
	}

	private void inherit(Kept parent, BookAt book, Map<WrittenRule, String> names) throws NotDone {
		Map<WrittenRule, String> before = known.containsKey(parent.id()) ? known.get(parent.id()) : of(parent);
		for (RuleChange change : BookChanges.rules(shelf.at(parent), book)) {
			if (change.before().isPresent() && change.after().isPresent() && before.containsKey(change.before().get())) {
				names.putIfAbsent(change.after().get(), before.get(change.before().get()));
			}
		}
	}
}
