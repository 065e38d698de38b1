package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** The smallest step by which one job differs from another. */
public sealed interface Change {
	/** The place in the job it concerns. */
	JobField place();

	/** @return {@code job} with this change made */
	Job apply(Job job);

	/** @return whether {@code job} can be made so by somebody on site, or may turn out so because nobody has said */
	boolean possibleOnSite(Job job);

	/** @return for people: "outdoor unit: stages is 2 instead of 1" */
	String sentence(Job job);

	private static boolean mayComeOrGo(Job job, FactKind kind) {
		return kind.changesOnSite() || job.entry(kind).presence() == Job.Presence.UNKNOWN;
	}

	/** One answer is another. @param to in the domain of the field */
	record Answered(JobField place, Value to) implements Change {
		@Override
		public Job apply(Job job) {
			FactKind kind = place.kind();
			Job with = job.entry(kind).facts().isEmpty() ? job.with(kind, Job.Entry.of(List.of(kind.create(Map.of())))) : job;
			return with.with(kind, place.item(), field(), Answer.of(to));
		}

		@Override
		public boolean possibleOnSite(Job job) {
			return field().changesOnSite() || before(job).value().isEmpty();
		}

		@Override
		public String sentence(Job job) {
			String before = before(job).value().map(v -> " instead of " + v.text()).orElse("");
			return place.label() + " is " + to.text() + before;
		}

		private Answer<Value> before(Job job) {
			List<Fact> facts = job.entry(place.kind()).facts();
			return place.item() < facts.size() ? place.kind().answer(facts.get(place.item()), field()) : Answer.unknown();
		}

		private Field field() {
			return place.field().orElseThrow();
		}
	}

	/** There is one more fact of a kind; nothing more is known of it. */
	record Added(JobField place) implements Change {
		@Override
		public Job apply(Job job) {
			List<Fact> facts = new ArrayList<>(job.entry(place.kind()).facts());
			facts.add(place.kind().create(Map.of()));
			return job.with(place.kind(), Job.Entry.of(facts));
		}

		@Override
		public boolean possibleOnSite(Job job) {
			return Change.mayComeOrGo(job, place.kind());
		}

		@Override
		public String sentence(Job job) {
			return "there is " + (job.entry(place.kind()).facts().isEmpty() ? place.kind().one() : "one more " + place.kind().label());
		}
	}

	/** A fact is not there. */
	record Removed(JobField place) implements Change {
		@Override
		public Job apply(Job job) {
			List<Fact> facts = new ArrayList<>(job.entry(place.kind()).facts());
			if (!facts.isEmpty()) {
				facts.remove(place.item());
			}
			return job.with(place.kind(), Job.Entry.of(facts));
		}

		@Override
		public boolean possibleOnSite(Job job) {
			return Change.mayComeOrGo(job, place.kind());
		}

		@Override
		public String sentence(Job job) {
			return place.kind().many() && !job.entry(place.kind()).facts().isEmpty()
					? place.kind().label() + " " + (place.item() + 1) + " is not there"
					: "there is no " + place.kind().label();
		}
	}
}
