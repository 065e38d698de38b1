package org.setwright.trade.calculation.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** What every computed fact promises, held against jobs drawn at random; each failure names its seed. */
class CalculatedFactsTest {
	private static final int JOBS = 400;
	private static final Catalogue CATALOGUE = Trade.catalogue();

	@Test
	void everySourceIsAFieldOfTheCatalogue() {
		for (FactKind kind : RandomJobs.calculated()) {
			for (Field field : kind.fields()) {
				for (String source : sources(field)) {
					String[] words = source.split("\\.");
					assertTrue(CATALOGUE.kind(words[0]).flatMap(k -> k.field(words[1])).isPresent(), kind + " " + field + ": " + source);
				}
			}
		}
	}

	@Test
	void whenEverythingIsKnownEveryComputedAnswerIsKnownAndWithinItsRange() {
		for (long seed = 1; seed <= JOBS; seed++) {
			Job job = computed(new RandomJobs(seed).known());
			for (FactKind kind : RandomJobs.calculated()) {
				Job.Entry entry = job.entry(kind);
				assertNotEquals(Presence.UNKNOWN, entry.presence(), "seed " + seed + ", " + kind);
				for (Field field : entry.facts().isEmpty() ? List.<Field>of() : kind.fields()) {
					Value value = answer(entry, kind, field).value().orElseThrow(() -> new AssertionError(
							kind + " " + field.label() + " is unknown though everything is known"));
					within(field.domain(), value, "seed " + seed + ", " + kind + " " + field.label());
				}
			}
		}
	}

	@Test
	void findingOutMoreNeverChangesWhatIsAlreadyKnown() {
		for (long seed = 1; seed <= JOBS; seed++) {
			RandomJobs jobs = new RandomJobs(seed);
			Job whole = jobs.known();
			Job later = computed(whole);
			Job sooner = computed(jobs.forgotten(whole));
			for (FactKind kind : RandomJobs.calculated()) {
				Job.Entry before = sooner.entry(kind);
				if (before.presence() != Presence.UNKNOWN) {
					assertEquals(later.entry(kind).presence(), before.presence(), "seed " + seed + ", " + kind);
				}
				for (Field field : before.facts().isEmpty() ? List.<Field>of() : kind.fields()) {
					answer(before, kind, field).value().ifPresent(value -> assertEquals(
							answer(later.entry(kind), kind, field).value().orElseThrow(), value, kind + " " + field.label()));
				}
			}
		}
	}

	@Test
	void onlyTheSourcesNamedMatter() {
		for (long seed = 1; seed <= JOBS / 5; seed++) {
			RandomJobs jobs = new RandomJobs(seed);
			Job job = jobs.known();
			Job before = computed(job);
			for (FactKind stated : RandomJobs.stated()) {
				for (Field changed : stated.fields()) {
					String name = stated.name() + "." + changed.name();
					for (Field field : differing(before, computed(jobs.changed(job, stated, changed)))) {
						assertTrue(sources(field).contains(name), "seed " + seed + ": " + field.label() + " also depends on " + name);
					}
				}
			}
		}
	}

	@Test
	void everySourceNamedMattersInSomeJob() {
		Map<Field, Set<String>> idle = new LinkedHashMap<>();
		RandomJobs.calculated().forEach(k -> k.fields().forEach(f -> idle.put(f, new TreeSet<>(sources(f)))));
		for (long seed = 1; seed <= 50 * JOBS && !idle.isEmpty(); seed++) {
			RandomJobs jobs = new RandomJobs(seed);
			Job job = jobs.known();
			Job before = computed(job);
			for (String source : idle.values().stream().flatMap(Set::stream).distinct().toList()) {
				String[] words = source.split("\\.");
				FactKind kind = CATALOGUE.kind(words[0]).orElseThrow();
				differing(before, computed(jobs.changed(job, kind, kind.field(words[1]).orElseThrow())))
						.forEach(field -> idle.getOrDefault(field, new HashSet<>()).remove(source));
			}
			idle.values().removeIf(Set::isEmpty);
		}
		assertEquals(Map.of(), idle, "sources that never mattered");
	}

	private static List<Field> differing(Job before, Job after) {
		List<Field> differing = new ArrayList<>();
		for (FactKind kind : RandomJobs.calculated()) {
			Job.Entry a = before.entry(kind);
			Job.Entry b = after.entry(kind);
			boolean both = !a.facts().isEmpty() && !b.facts().isEmpty();
			if (!a.equals(b)) {
				kind.fields().stream().filter(f -> !both || !answer(a, kind, f).equals(answer(b, kind, f))).forEach(differing::add);
			}
		}
		return differing;
	}

	@Test
	void whatIsStillOpenNamesStatedFieldsToLookUpAndLookingThemUpCloses() {
		for (long seed = 1; seed <= JOBS; seed++) {
			RandomJobs jobs = new RandomJobs(seed);
			Job whole = jobs.known();
			Job open = computed(jobs.forgotten(whole));
			for (JobField place : open(open)) {
				Set<JobField> lookUps = CATALOGUE.toLookUp(open, place);
				for (JobField lookUp : lookUps) {
					assertTrue(!lookUp.kind().calculated(), "seed " + seed + ": " + place.label() + " asks for " + lookUp.label());
				}
				assertTrue(isClosed(computed(answered(open, whole, place)), place), "seed " + seed + ": " + place.label());
			}
		}
	}

	/** Looks up what is asked for, and again what is asked for then, until nothing new is. */
	private static Job answered(Job open, Job whole, JobField place) {
		Job job = open;
		Set<JobField> asked = new HashSet<>();
		for (Set<JobField> next = CATALOGUE.toLookUp(job, place); asked.addAll(next);) {
			for (JobField lookUp : next) {
				FactKind kind = lookUp.kind();
				job = lookUp.field().isEmpty() ? job.with(kind, whole.entry(kind))
						: lookedUp(job, lookUp, answer(whole.entry(kind), lookUp.item(), kind, lookUp.field().get()));
			}
			job = computed(job);
			if (isClosed(job, place)) {
				break;
			}
			next = CATALOGUE.toLookUp(job, place);
		}
		return job;
	}

	private static Job lookedUp(Job job, JobField place, Answer<Value> answer) {
		FactKind kind = place.kind();
		Field field = place.field().orElseThrow();
		return job.entry(kind).facts().isEmpty()
				? job.with(kind, Job.Entry.of(List.of(kind.create(Map.of(field, answer.value().orElseThrow())))))
				: job.with(kind, place.item(), field, answer);
	}

	private static boolean isClosed(Job job, JobField place) {
		Job.Entry entry = job.entry(place.kind());
		return entry.presence() == Presence.NONE || entry.presence() == Presence.PRESENT
				&& (place.field().isEmpty() || answer(entry, place.kind(), place.field().get()).isKnown());
	}

	private static List<JobField> open(Job job) {
		List<JobField> open = new ArrayList<>();
		for (FactKind kind : RandomJobs.calculated()) {
			Job.Entry entry = job.entry(kind);
			if (entry.presence() == Presence.UNKNOWN) {
				open.add(JobField.presence(kind));
			} else if (entry.presence() == Presence.PRESENT) {
				kind.fields().stream().filter(f -> !answer(entry, kind, f).isKnown()).forEach(f -> open.add(JobField.of(kind, 0, f)));
			}
		}
		return open;
	}

	private static void within(Domain domain, Value value, String what) {
		if (domain instanceof Domain.Measure measure && value instanceof Value.Amount amount) {
			double number = amount.quantity().in(measure.unit());
			assertTrue(number >= measure.least() && number <= measure.most(), what + ": " + value.text());
		} else if (domain instanceof Domain.Whole whole && value instanceof Value.Count count) {
			assertTrue(count.number() >= whole.least() && count.number() <= whole.most(), what + ": " + value.text());
		}
	}

	private static Answer<Value> answer(Job.Entry entry, FactKind kind, Field field) {
		return answer(entry, 0, kind, field);
	}

	private static Answer<Value> answer(Job.Entry entry, int item, FactKind kind, Field field) {
		return kind.answer(entry.facts().get(item), field);
	}

	private static List<String> sources(Field field) {
		return field.calculation().orElseThrow().from();
	}

	private static Job computed(Job job) {
		return CATALOGUE.withCalculations(job);
	}
}
