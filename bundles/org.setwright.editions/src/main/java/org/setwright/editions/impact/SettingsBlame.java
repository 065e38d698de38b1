package org.setwright.editions.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.impact.Telling.Point;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.engine.Edition;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Job;

/**
 * What is responsible where no change of rules brings a difference about and the shop's own settings changed: these alone, or with
 * changes of rules. Tried with the earlier rules under the later settings.
 *
 * @param bridge the earlier rules under the later settings; empty when they do not go together, so that nothing can be tried
 */
record SettingsBlame(boolean changed, Optional<Edition> bridge, Optional<Mixes> mixes) {

	static SettingsBlame of(Shelf shelf, BookChanges changes, List<Rule> after) throws NotDone {
		if (shelf.catalogue(changes.before()).equals(shelf.catalogue(changes.after()))) {
			return new SettingsBlame(false, Optional.empty(), Optional.empty());
		}
		BookAt between = shelf.withSettingsOf(changes.before(), changes.after());
		Optional<List<Rule>> rules = shelf.rules(between);
		Optional<Edition> bridge = rules.isEmpty() ? Optional.empty() : Edition.ofRules(rules.get(), shelf.catalogue(between));
		return new SettingsBlame(true, bridge, bridge.map(b -> new Mixes(b.rules(), after, changes.thatMatter())));
	}

	/** @return what is responsible for one job, whose answers perhaps changed as well; to be asked many times */
	OfJob of(Job was, Job is) {
		Optional<Rehearsal> job = bridge.map(b -> b.rehearse(was));
		Optional<Rehearsal> others = was.equals(is) ? Optional.empty() : bridge.map(b -> b.rehearse(is));
		return new OfJob(changed, job.map(Rehearsal::outcome).map(Telling::of),
				job.map(j -> new Blame(mixes.orElseThrow(), j, others)));
	}

	/** For one job. */
	record OfJob(boolean changed, Optional<Map<Point, String>> alone, Optional<Blame> together) {

		/** @param after what {@code point} comes to with all changes @return empty when the settings are as they were, or nothing was found */
		List<Cause> causes(Point point, String after) {
			if (!changed || together.isPresent() && alone.orElseThrow().getOrDefault(point, Telling.missing(point)).equals(after)) {
				return changed ? Cause.OTHER_SETTINGS : List.of();
			}
			List<Cause> causes = new ArrayList<>();
			together.ifPresent(b -> b.causes(point, after).forEach(c -> causes.add(c.with(Culprit.SETTINGS))));
			return together.isEmpty() ? Cause.OTHER_SETTINGS : causes;
		}
	}
}
