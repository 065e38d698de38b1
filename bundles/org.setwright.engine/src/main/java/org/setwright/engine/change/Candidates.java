package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/**
 * The single changes worth trying at a place of a job: for an answer one value out of each part of its domain that the
 * rules can tell apart; for a kind of fact those that come or go. A kind gains facts or loses them, not both, and an
 * answer once known is never taken for unknown.
 */
final class Candidates {
	private final Slice slice;
	private final Catalogue catalogue;
	private final Job job;
	private final Crossings crossings;
	private final Map<JobField, List<Change>> answers = new LinkedHashMap<>();

	/** @param job as it is now; places of changes are places in it */
	Candidates(Slice slice, Catalogue catalogue, Job job) {
		this.slice = slice;
		this.catalogue = catalogue;
		this.job = job;
		crossings = new Crossings(catalogue, slice.calculated());
	}

	/** @return every other value worth trying for each stated answer that is known */
	List<Change> ofKnownAnswers() {
		List<Change> all = new ArrayList<>();
		for (FactKind kind : slice.kinds()) {
			for (int i = 0; i < job.entry(kind).facts().size(); i++) {
				for (Field field : slice.tests(kind).keySet()) {
					JobField place = JobField.of(kind, i, field);
					if (now(place).isKnown()) {
						all.addAll(answers(place));
					}
				}
			}
		}
		return all;
	}

	/**
	 * @param looked places in the job as changed by {@code made}
	 * @return every change at one of them that goes together with those made
	 */
	Set<Change> at(Set<JobField> looked, ChangedJob made) {
		Set<Change> changes = new LinkedHashSet<>();
		for (JobField place : looked) {
			stated(place, made.job()).forEach(p -> {
				if (p.field().isPresent()) {
					answers(made.before(p)).stream().filter(made::allows).forEach(changes::add);
				} else {
					comingAndGoing(p.kind(), made).stream().filter(made::allows).forEach(changes::add);
				}
			});
		}
		return changes;
	}

	private List<Change> comingAndGoing(FactKind kind, ChangedJob made) {
		List<Change> changes = new ArrayList<>();
		int facts = job.entry(kind).facts().size();
		for (int i = 0; i < facts && (!kind.always() || facts > 1); i++) {
			changes.add(new Change.Removed(new JobField(kind, i, Optional.empty())));
		}
		if (!kind.always() && job.entry(kind).presence() == Job.Presence.UNKNOWN) {
			changes.add(new Change.Removed(JobField.presence(kind)));
		}
		int next = made.job().entry(kind).facts().size();
		if (!kind.exactlyOne() && (next == 0 || kind.many())) {
			changes.add(new Change.Added(new JobField(kind, next, Optional.empty())));
		}
		return changes;
	}

	private List<Change> answers(JobField place) {
		return answers.computeIfAbsent(place, p -> {
			Answer<Value> now = now(p);
			List<Test.OfField> tests = slice.tests(p.kind()).getOrDefault(p.field().orElseThrow(), List.of());
			return Stream.concat(Values.of(p.field().orElseThrow(), tests).stream(), calculated(p, tests).stream())
					.filter(v -> now.value().map(n -> !n.same(v)).orElse(true)).sorted(Comparator.comparingDouble(v -> distance(v, now)))
					.<Change>map(v -> new Change.Answered(p, v)).toList();
		});
	}

	/** @return amounts that change what a calculation comes to as far as rules can tell, all else being as it is now; none for facts yet to come */
	private List<Value> calculated(JobField place, List<Test.OfField> tests) {
		boolean later = place.item() > 0 && place.item() >= job.entry(place.kind()).facts().size();
		if (later || !(place.field().orElseThrow().domain() instanceof Domain.Measure measure)) {
			return List.of();
		}
		TreeSet<Double> edges = crossings.at(place, measure, Values.samples(measure, tests), job);
		return edges.isEmpty() ? List.of() : Values.amounts(measure, Values.between(measure, edges));
	}

	private Answer<Value> now(JobField place) {
		List<Fact> facts = job.entry(place.kind()).facts();
		return place.item() < facts.size() ? place.kind().answer(facts.get(place.item()), place.field().orElseThrow()) : Answer.unknown();
	}

	private static double distance(Value value, Answer<Value> now) {
		return value.plain() instanceof Number there && now.value().isPresent() && now.value().get().plain() instanceof Number here
				? Math.abs(there.doubleValue() - here.doubleValue()) : 0;
	}

	/** What is calculated changes only by way of what it is calculated from. */
	private List<JobField> stated(JobField place, Job changed) {
		if (!place.kind().calculated()) {
			return List.of(place);
		}
		Set<String> sources = new LinkedHashSet<>();
		place.field().map(List::of).orElse(place.kind().fields())
				.forEach(f -> f.calculation().ifPresent(c -> sources.addAll(c.from())));
		List<JobField> places = new ArrayList<>();
		for (String source : sources) {
			FactKind kind = catalogue.kind(source.split("\\.")[0]).orElseThrow();
			Field field = kind.field(source.split("\\.")[1]).orElseThrow();
			int facts = kind.exactlyOne() ? 1 : changed.entry(kind).facts().size();
			for (int i = 0; i < facts; i++) {
				places.add(JobField.of(kind, i, field));
			}
			places.add(JobField.presence(kind));
		}
		return places;
	}
}
