package org.setwright.editions.since;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.book.JobCase;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.git.EditionLog;
import org.setwright.editions.impact.Cause;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.impact.Telling;
import org.setwright.editions.kept.EditionId;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.engine.Amendment;
import org.setwright.engine.Edition;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;

/**
 * Since when a job, with the answers it has now, comes to a value. Immutable.
 *
 * @param value what it comes to
 * @param origins where the value came in, the newest first; more than one only where lines that were joined each brought it
 * @param passedOver editions that could not be run because of errors, and were passed over
 */
public record Since(JobCase job, Setting setting, String value, List<Origin> origins, List<Kept> passedOver) {
	public Since {
		origins = List.copyOf(origins);
		passedOver = List.copyOf(passedOver);
	}

	/**
	 * Goes back from {@code start} as long as the job comes to the same, edition by edition: a value may come and go, so no edition
	 * in between may be left out.
	 *
	 * @param start an edition that can be run
	 */
	public static Since of(Shelf shelf, EditionLog log, Kept start, JobCase job, Setting setting) throws NotDone {
		Edition reference = shelf.compiled(shelf.at(start)).edition().orElseThrow(() ->
				new NotDone("Edition " + start.shown() + " has errors and cannot be run.",
				"Ask from an edition that check finds no errors in."));
		return new Search(shelf, log, reference, job.job(), setting).from(start, job);
	}

	/** One search. */
	private static final class Search {
		private final Shelf shelf;
		private final EditionLog log;
		private final Edition reference;
		private final Job asked;
		private final Rehearsal job;
		private final Setting setting;
		private final Map<EditionId, Optional<String>> values = new HashMap<>();
		private final Set<Kept> passedOver = new LinkedHashSet<>();

		private Search(Shelf shelf, EditionLog log, Edition reference, Job asked, Setting setting) {
			this.shelf = shelf;
			this.log = log;
			this.reference = reference;
			this.asked = asked;
			job = reference.rehearse(asked);
			this.setting = setting;
		}

		private Since from(Kept start, JobCase jobCase) throws NotDone {
			String value = Telling.of(job.outcome(), setting);
			values.put(start.id(), Optional.of(value));
			List<Origin> origins = new ArrayList<>();
			Set<EditionId> seen = new LinkedHashSet<>(Set.of(start.id()));
			Deque<Kept> open = new ArrayDeque<>(List.of(start));
			while (!open.isEmpty()) {
				Kept edition = open.remove();
				List<Kept> parents = runnable(edition);
				List<Kept> same = new ArrayList<>();
				for (Kept parent : parents) {
					if (value(parent).equals(Optional.of(value))) {
						same.add(parent);
					}
				}
				if (same.isEmpty()) {
					origins.add(origin(edition, parents.isEmpty() ? Optional.empty() : Optional.of(parents.get(0)), value));
				}
				same.stream().filter(p -> seen.add(p.id())).forEach(open::add);
			}
			return new Since(jobCase, setting, value, origins, List.copyOf(passedOver));
		}

		/** The editions that {@code edition} came from, those that cannot be run replaced by what they came from. */
		private List<Kept> runnable(Kept edition) throws NotDone {
			List<Kept> found = new ArrayList<>();
			Deque<EditionId> look = new ArrayDeque<>(edition.parents());
			Set<EditionId> seen = new LinkedHashSet<>();
			while (!look.isEmpty()) {
				EditionId id = look.remove();
				if (seen.add(id)) {
					Kept parent = log.edition(id).orElseThrow();
					if (value(parent).isPresent()) {
						found.add(parent);
					} else {
						passedOver.add(parent);
						look.addAll(parent.parents());
					}
				}
			}
			return found;
		}

		private Optional<String> value(Kept edition) throws NotDone {
			Optional<String> known = values.get(edition.id());
			if (known == null) {
				known = rehearsed(edition).map(r -> Telling.of(r.outcome(), setting));
				values.put(edition.id(), known);
			}
			return known;
		}

		private Optional<Rehearsal> rehearsed(Kept edition) throws NotDone {
			Optional<List<Rule>> rules = shelf.rules(shelf.at(edition));
			Catalogue catalogue = shelf.catalogue(shelf.at(edition));
			return catalogue.equals(reference.catalogue()) ? rules.map(reference::amend).filter(Amendment::sound).map(job::under)
					: rules.flatMap(r -> Edition.ofRules(r, catalogue)).map(e -> e.rehearse(asked));
		}

		private Origin origin(Kept edition, Optional<Kept> before, String value) throws NotDone {
			if (before.isEmpty()) {
				return new Origin(edition, before, "", List.of());
			}
			BookAt was = shelf.at(before.get());
			BookAt is = shelf.at(edition);
			List<Rule> old = shelf.rules(was).orElseThrow();
			List<Cause> causes = Impact.causes(shelf, BookChanges.between(shelf, was, is), old, shelf.rules(is).orElseThrow(), asked,
					rehearsed(before.get()).orElseThrow(), new Telling.Point(Telling.Kind.SETTING, setting.label(), Optional.of(setting)), value);
			return new Origin(edition, before, value(before.get()).orElseThrow(), causes);
		}
	}
}
