package org.setwright.trade.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is known about one job: for every kind of fact, whether the job has any, and those it has. A kind nobody has
 * said anything about is {@link Presence#UNKNOWN}, which is not the same as {@link Presence#NONE}.
 *
 * @param entries by kind of fact; a kind that is missing is unknown
 */
public record Job(Map<FactKind, Entry> entries) {

	/** Whether a job has any fact of a kind. */
	public enum Presence {
		/** It has the ones listed, and no others. */
		PRESENT,
		/** Somebody made sure that it has none. */
		NONE,
		/** Nobody has said. */
		UNKNOWN
	}

	/** What a job says about one kind. @param facts not empty exactly when present */
	public record Entry(Presence presence, List<Fact> facts) {
		/** Nobody has said. */
		public static final Entry UNKNOWN = new Entry(Presence.UNKNOWN, List.of());
		/** There is none. */
		public static final Entry NONE = new Entry(Presence.NONE, List.of());

		public Entry {
			facts = List.copyOf(facts);
			if (facts.isEmpty() == (presence == Presence.PRESENT)) {
				throw new IllegalArgumentException("facts are listed exactly when they are present");
			}
		}

		/** @return the entry holding these and no others; none when the list is empty */
		public static Entry of(List<Fact> facts) {
			return facts.isEmpty() ? NONE : new Entry(Presence.PRESENT, facts);
		}
	}

	public Job {
		entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
	}

	/** @return the job about which nothing is known */
	public static Job blank() {
		return new Job(Map.of());
	}

	/** @return what is said about {@code kind} */
	public Entry entry(FactKind kind) {
		return entries.getOrDefault(kind, Entry.UNKNOWN);
	}

	/** @return what is said about the kind that record class {@code type} describes */
	public Entry entry(Class<? extends Fact> type) {
		for (Map.Entry<FactKind, Entry> entry : entries.entrySet()) {
			if (entry.getKey().type() == type) {
				return entry.getValue();
			}
		}
		return Entry.UNKNOWN;
	}

	/** @return the only fact of record class {@code type}, or empty when there is none or nobody has said */
	public <F extends Fact> Optional<F> one(Class<F> type) {
		List<Fact> facts = entry(type).facts();
		return facts.isEmpty() ? Optional.empty() : Optional.of(type.cast(facts.get(0)));
	}

	/** @return the facts of record class {@code type}; empty when there are none or nobody has said */
	public <F extends Fact> List<F> all(Class<F> type) {
		return entry(type).facts().stream().map(type::cast).toList();
	}

	/** @return the same job saying {@code entry} about {@code kind} */
	public Job with(FactKind kind, Entry entry) {
		Map<FactKind, Entry> changed = new LinkedHashMap<>(entries);
		changed.put(kind, entry);
		return new Job(changed);
	}

	/** @return the same job with one answer changed, in the fact listed {@code item}th (from 0) of {@code kind} */
	public Job with(FactKind kind, int item, Field field, Answer<Value> answer) {
		List<Fact> facts = new ArrayList<>(entry(kind).facts());
		facts.set(item, kind.with(facts.get(item), field, answer));
		return with(kind, Entry.of(facts));
	}
}
