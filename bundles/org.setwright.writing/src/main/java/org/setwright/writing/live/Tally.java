package org.setwright.writing.live;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.engine.Standing;

/** What becomes of every rule of a book on every saved job. Immutable. */
public final class Tally {
	/** Nothing has been counted yet. */
	public static final Tally NONE = new Tally(new Rules(List.of(), Map.of()), List.of(), Optional.empty());

	private final Rules rules;
	private final List<Job> jobs;
	private final Optional<String> why;

	/**
	 * The rules that were counted.
	 *
	 * @param before the number each had in the book the untouched jobs were tried with; -1 for a new one
	 * @param shown by the name a rule goes by on the screen: its number, and whether it stands in for a half-written one
	 */
	record Rules(List<Integer> before, Map<String, Shown> shown) {
	}

	/** @param number of the rule in {@link Rules#before} @param stale whether it is the last one that could be read */
	record Shown(int number, boolean stale) {
	}

	/** @param standings by number of the rule: in the book as it is when touched, else in the book before */
	record Job(String path, List<Standing> standings, boolean touched) {
	}

	/** @param why everything is as it was before, in a sentence; empty when it is up to date */
	Tally(Rules rules, List<Job> jobs, Optional<String> why) {
		this.rules = rules;
		this.jobs = jobs;
		this.why = why;
	}

	/** @return why all counts are those of the last time the book could be read as a whole; empty when they are up to date */
	public Optional<String> stale() {
		return why;
	}

	/** @return how many jobs were counted */
	public int jobs() {
		return jobs.size();
	}

	/** @param rule its name, or {@code table NAME, row NUMBER} @return what becomes of it; empty when it has never been readable */
	public Optional<RuleTally> of(String rule) {
		return Optional.ofNullable(rules.shown.get(rule)).map(shown -> {
			Map<Standing, List<String>> paths = new EnumMap<>(Standing.class);
			for (Job job : jobs) {
				paths.computeIfAbsent(standing(job, shown.number), s -> new ArrayList<>()).add(job.path);
			}
			return new RuleTally(paths, shown.stale || why.isPresent());
		});
	}

	private Standing standing(Job job, int number) {
		int at = job.touched ? number : rules.before.get(number);
		return at < 0 ? Standing.SILENT : job.standings.get(at);
	}

	/** @return the same counts, said to be those from before */
	Tally outOfDate(String reason) {
		return new Tally(rules, jobs, Optional.of(reason));
	}

	/** @return every rule's tally, by name */
	public Map<String, RuleTally> all() {
		Map<String, RuleTally> all = new HashMap<>();
		rules.shown.keySet().forEach(name -> all.put(name, of(name).orElseThrow()));
		return all;
	}
}
