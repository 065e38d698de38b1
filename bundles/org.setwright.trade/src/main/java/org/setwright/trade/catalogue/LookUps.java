package org.setwright.trade.catalogue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds what somebody would have to look up before a computed answer can be known. Fields that decide what kind of job it
 * is always count. Once they are known, a number counts only if the answer stays open without it: the price of propane is
 * not asked for where gas is burnt.
 */
final class LookUps {
	private final Catalogue catalogue;
	private final Function<FactKind, Function<Job, Job.Entry>> calculations;
	private final Job job;

	LookUps(Catalogue catalogue, Function<FactKind, Function<Job, Job.Entry>> calculations, Job job) {
		this.catalogue = catalogue;
		this.calculations = calculations;
		this.job = job;
	}

	/** @return the stated places to look up for {@code place}: itself when it is not computed */
	Set<JobField> of(JobField place) {
		Set<JobField> unknown = new LinkedHashSet<>();
		add(place, unknown);
		if (unknown.isEmpty()) {
			return Set.of(place);
		}
		Function<Job, Job.Entry> compute = calculations.apply(place.kind());
		if (unknown.size() == 1 || compute == null || unknown.stream().anyMatch(LookUps::decidesTheKindOfJob)) {
			return unknown;
		}
		Job full = filled(unknown);
		Set<JobField> counting = unknown.stream().filter(p -> open(place, compute.apply(without(full, p, unknown))))
				.collect(Collectors.toCollection(LinkedHashSet::new));
		return counting.isEmpty() ? unknown : counting;
	}

	private void add(JobField place, Set<JobField> into) {
		Stream<Field> computed = place.field().map(Stream::of)
				.orElse(place.kind().calculated() ? place.kind().fields().stream() : Stream.empty());
		List<String> sources = computed.flatMap(f -> f.calculation().stream()).flatMap(c -> c.from().stream()).distinct().toList();
		if (sources.isEmpty()) {
			into.add(place);
		}
		sources.forEach(source -> addSource(source, into));
	}

	private void addSource(String kindAndField, Set<JobField> into) {
		String[] words = kindAndField.split("\\.");
		FactKind kind = catalogue.kind(words[0]).orElseThrow();
		Field field = kind.field(words[1]).orElseThrow();
		Job.Entry entry = job.entry(kind);
		if (entry.presence() == Job.Presence.UNKNOWN) {
			add(kind.exactlyOne() ? JobField.of(kind, 0, field) : JobField.presence(kind), into);
		}
		for (int i = 0; i < entry.facts().size(); i++) {
			if (!kind.answer(entry.facts().get(i), field).isKnown()) {
				add(JobField.of(kind, i, field), into);
			}
		}
	}

	private static boolean decidesTheKindOfJob(JobField place) {
		return place.field().map(f -> f.domain() instanceof Domain.Choices || f.domain() instanceof Domain.YesNo).orElse(true);
	}

	private Job filled(Set<JobField> places) {
		Job result = job;
		for (JobField place : places) {
			result = filled(result, place.kind(), place.item(), place.field().orElseThrow());
		}
		return result;
	}

	/** @return {@code full} with {@code place} alone unknown again */
	private Job without(Job full, JobField place, Set<JobField> places) {
		boolean alone = places.stream().noneMatch(p -> p.kind() == place.kind() && !p.equals(place));
		return alone ? full.with(place.kind(), job.entry(place.kind()))
				: full.with(place.kind(), place.item(), place.field().orElseThrow(), Answer.unknown());
	}

	private static Job filled(Job job, FactKind kind, int item, Field field) {
		Value value = some(field.domain());
		return job.entry(kind).facts().isEmpty() ? job.with(kind, Job.Entry.of(List.of(kind.create(Map.of(field, value)))))
				: job.with(kind, item, field, Answer.of(value));
	}

	private static Value some(Domain domain) {
		if (domain instanceof Domain.Whole whole) {
			return new Value.Count(whole.least());
		} else if (domain instanceof Domain.Measure measure) {
			return new Value.Amount(new Quantity(measure.least(), measure.unit()));
		}
		return new Value.Words("some words");
	}

	private static boolean open(JobField place, Job.Entry entry) {
		if (entry.presence() == Job.Presence.UNKNOWN || place.field().isEmpty() || entry.facts().isEmpty()) {
			return entry.presence() == Job.Presence.UNKNOWN;
		}
		return !place.kind().answer(entry.facts().get(place.item()), place.field().get()).isKnown();
	}
}
