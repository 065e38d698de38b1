package org.setwright.trade.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Every kind of fact and every setting there is, each listed once. Start here to find what a word in a rule means.
 * Immutable.
 */
public final class Catalogue {
	private final Map<String, FactKind> kinds = new LinkedHashMap<>();
	private final Map<String, Setting> settings = new LinkedHashMap<>();
	private final Map<FactKind, Function<Job, Job.Entry>> calculations = new LinkedHashMap<>();

	private Catalogue(Builder builder) {
		builder.kinds.forEach(k -> put(kinds, k.name(), k));
		builder.settings.forEach(s -> put(settings, s.id(), s));
		calculations.putAll(builder.calculations);
	}

	private Catalogue(Catalogue base, List<Setting> settings) {
		kinds.putAll(base.kinds);
		calculations.putAll(base.calculations);
		settings.forEach(s -> put(this.settings, s.id(), s));
	}

	private static <V> void put(Map<String, V> map, String name, V value) {
		if (map.put(name, value) != null) {
			throw new IllegalArgumentException("listed twice in the catalogue: " + name);
		}
	}

	/** @return every kind of fact, in the order a form asks them; calculated kinds last */
	public Collection<FactKind> kinds() {
		return java.util.Collections.unmodifiableCollection(kinds.values());
	}

	/** @return every setting, in the order they are set on the controller */
	public Collection<Setting> settings() {
		return java.util.Collections.unmodifiableCollection(settings.values());
	}

	/** @return the kind whose word in rules is {@code name}, or empty */
	public Optional<FactKind> kind(String name) {
		return Optional.ofNullable(kinds.get(name));
	}

	/** @return the kind that record class {@code type} describes; it must be listed */
	public FactKind kind(Class<? extends Fact> type) {
		return kind(type.getSimpleName()).orElseThrow();
	}

	/** @return the kind job files call {@code key} (any case), or empty */
	public Optional<FactKind> kindCalled(String key) {
		return kinds.values().stream().filter(k -> k.key().equalsIgnoreCase(key.strip())).findFirst();
	}

	/** @return the setting whose word in rules is {@code id}, or empty */
	public Optional<Setting> setting(String id) {
		return Optional.ofNullable(settings.get(id));
	}

	/** @return the setting people call {@code label} (any case), or empty */
	public Optional<Setting> settingLabelled(String label) {
		return settings.values().stream().filter(s -> s.label().equalsIgnoreCase(label.strip())).findFirst();
	}

	/**
	 * @param more settings whose ids are not in this catalogue
	 * @return this catalogue with {@code more} settings, each behind the others of its group; a new group comes last. This one
	 *         itself when there are none.
	 * @throws IllegalArgumentException when an id is listed already
	 */
	public Catalogue with(List<Setting> more) {
		if (more.isEmpty()) {
			return this;
		}
		List<Setting> all = new ArrayList<>(settings.values());
		for (Setting setting : more) {
			int last = all.size() - 1;
			while (last >= 0 && !all.get(last).group().equals(setting.group())) {
				last--;
			}
			all.add(last < 0 ? all.size() : last + 1, setting);
		}
		return new Catalogue(this, all);
	}

	/** @return whether {@code other} knows the same facts and settings in the same order, and says the same of them */
	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Catalogue catalogue && List.copyOf(kinds.values()).equals(List.copyOf(catalogue.kinds.values()))
				&& sameSettings(List.copyOf(settings.values()), List.copyOf(catalogue.settings.values()));
	}

	private static boolean sameSettings(List<Setting> these, List<Setting> others) {
		return these.size() == others.size() && java.util.stream.IntStream.range(0, these.size()).allMatch(i -> these.get(i).saysAs(others.get(i)));
	}

	@Override
	public int hashCode() {
		return kinds.keySet().hashCode() * 31 + settings.keySet().hashCode();
	}

	/** @return {@code job} with its calculated facts added (or computed afresh) */
	public Job withCalculations(Job job) {
		Map<FactKind, Job.Entry> entries = new LinkedHashMap<>(job.entries());
		calculations.forEach((kind, compute) -> entries.put(kind, compute.apply(job)));
		return new Job(entries);
	}

	/**
	 * @param job with or without its calculated facts
	 * @return what somebody would have to look up to know the answer at {@code place}, which is unknown: itself, or for
	 *         something computed the unknown fields it still depends on
	 */
	public Set<JobField> toLookUp(Job job, JobField place) {
		return new LookUps(this, calculations::get, job).of(place);
	}

	/** Collects the entries of a catalogue. */
	public static final class Builder {
		private final List<FactKind> kinds = new ArrayList<>();
		private final List<Setting> settings = new ArrayList<>();
		private final Map<FactKind, Function<Job, Job.Entry>> calculations = new LinkedHashMap<>();

		/** Adds kinds of fact that people state. */
		@SafeVarargs
		public final Builder facts(Class<? extends Fact>... types) {
			for (Class<? extends Fact> type : types) {
				kinds.add(new FactKind(type));
			}
			return this;
		}

		/** Adds a kind of fact that is computed from the stated ones and that every job has. */
		public <F extends Fact> Builder calculated(Class<F> type, Function<Job, F> compute) {
			return calculatedIfAny(type, job -> Job.Entry.of(List.of(compute.apply(job))));
		}

		/**
		 * Adds a kind of fact that is computed from the stated ones and that not every job has.
		 *
		 * @param compute none when the calculation does not apply to the job, unknown when that depends on something nobody
		 *        has looked up
		 */
		public Builder calculatedIfAny(Class<? extends Fact> type, Function<Job, Job.Entry> compute) {
			FactKind kind = new FactKind(type);
			kinds.add(kind);
			calculations.put(kind, compute);
			return this;
		}

		/** Adds settings. */
		public Builder settings(Collection<Setting> more) {
			settings.addAll(more);
			return this;
		}

		/** @return the catalogue */
		public Catalogue build() {
			return new Catalogue(this);
		}
	}
}
