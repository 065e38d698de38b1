package org.setwright.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/**
 * Lists every job that differs from another by at most so many changes, over every value of some fields; slow, plain, and
 * without any knowledge of rules.
 */
final class EveryChange {
	private final Map<FactKind, List<Field>> fields;

	/** @param fields the kinds and fields that may change */
	EveryChange(Map<FactKind, List<Field>> fields) {
		this.fields = fields;
	}

	/** A changed job. @param places what is changed @param onSite whether all of it can change on site or was not known */
	record Changed(Job job, Set<JobField> places, boolean onSite) {
	}

	/** @return every job with at most {@code most} changes, the unchanged one included */
	List<Changed> of(Job job, int most) {
		List<Changed> all = new ArrayList<>(List.of(new Changed(job, Set.of(), true)));
		for (FactKind kind : fields.keySet()) {
			List<Changed> more = new ArrayList<>();
			for (Changed sofar : all) {
				entries(kind, job.entry(kind)).stream().filter(e -> sofar.places.size() + e.places.size() <= most)
						.forEach(e -> more.add(join(sofar, kind, e)));
			}
			all = more;
		}
		return all;
	}

	private static Changed join(Changed sofar, FactKind kind, Entry entry) {
		Set<JobField> places = new HashSet<>(sofar.places);
		places.addAll(entry.places);
		return new Changed(entry.places.isEmpty() ? sofar.job : sofar.job.with(kind, entry.entry), places, sofar.onSite && entry.onSite);
	}

	/** What may stand under one kind. */
	private record Entry(Job.Entry entry, Set<JobField> places, boolean onSite) {
	}

	private List<Entry> entries(FactKind kind, Job.Entry now) {
		boolean mayGo = kind.changesOnSite() || now.presence() == Job.Presence.UNKNOWN;
		List<Entry> entries = new ArrayList<>();
		if (now.facts().isEmpty()) {
			entries.add(new Entry(now, Set.of(), true));
			if (now.presence() == Job.Presence.UNKNOWN && !kind.always()) {
				entries.add(new Entry(Job.Entry.NONE, Set.of(JobField.presence(kind)), true));
			}
			for (Item item : items(kind, 0, kind.create(Map.of()))) {
				Set<JobField> places = new HashSet<>(item.places);
				if (!kind.exactlyOne()) {
					places.add(new JobField(kind, 0, Optional.empty()));
				}
				if (!places.isEmpty()) {
					entries.add(new Entry(Job.Entry.of(List.of(item.fact)), places, mayGo));
				}
			}
			return entries;
		}
		lists(kind, now, 0, new ArrayList<>(), new HashSet<>(), true, entries);
		return entries;
	}

	/** Every fact stays, changes or goes; and where none goes, one may come. */
	private void lists(FactKind kind, Job.Entry now, int next, List<Fact> facts, Set<JobField> places, boolean onSite, List<Entry> into) {
		if (next == now.facts().size()) {
			if (!facts.isEmpty() || !kind.always()) {
				into.add(new Entry(Job.Entry.of(facts), Set.copyOf(places), onSite));
			}
			if (kind.many() && facts.size() == now.facts().size()) {
				for (Item item : items(kind, next, kind.create(Map.of()))) {
					List<Fact> more = new ArrayList<>(facts);
					more.add(item.fact);
					Set<JobField> all = new HashSet<>(places);
					all.addAll(item.places);
					all.add(new JobField(kind, next, Optional.empty()));
					into.add(new Entry(Job.Entry.of(more), all, onSite && kind.changesOnSite()));
				}
			}
			return;
		}
		for (Item item : items(kind, next, now.facts().get(next))) {
			List<Fact> more = new ArrayList<>(facts);
			more.add(item.fact);
			Set<JobField> all = new HashSet<>(places);
			all.addAll(item.places);
			lists(kind, now, next + 1, more, all, onSite && item.onSite, into);
		}
		Set<JobField> without = new HashSet<>(places);
		without.add(new JobField(kind, next, Optional.empty()));
		lists(kind, now, next + 1, facts, without, onSite && kind.changesOnSite(), into);
	}

	/** One fact with some answers changed. */
	private record Item(Fact fact, Set<JobField> places, boolean onSite) {
	}

	private List<Item> items(FactKind kind, int at, Fact fact) {
		List<Item> items = new ArrayList<>(List.of(new Item(fact, Set.of(), true)));
		for (Field field : fields.get(kind)) {
			List<Item> more = new ArrayList<>(items);
			Answer<Value> now = kind.answer(fact, field);
			for (Item item : items) {
				for (Value value : field.domain().listed()) {
					if (now.value().filter(value::same).isEmpty()) {
						Set<JobField> places = new HashSet<>(item.places);
						places.add(JobField.of(kind, at, field));
						more.add(new Item(kind.with(item.fact, field, Answer.of(value)), places,
								item.onSite && (field.changesOnSite() || !now.isKnown())));
					}
				}
			}
			items = more;
		}
		return items;
	}

	/** @return the fields of {@code kindsAndFields}, each as {@code Kind.field} */
	static EveryChange over(org.setwright.trade.catalogue.Catalogue catalogue, List<String> kindsAndFields) {
		Map<FactKind, List<Field>> fields = new HashMap<>();
		for (String name : kindsAndFields) {
			FactKind kind = catalogue.kind(name.split("\\.")[0]).orElseThrow();
			fields.computeIfAbsent(kind, k -> new ArrayList<>()).add(kind.field(name.split("\\.")[1]).orElseThrow());
		}
		return new EveryChange(fields);
	}
}
