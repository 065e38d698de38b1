package org.setwright.check.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.setwright.book.Floors.Figure;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.engine.Edition;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Setting;

/**
 * How much of a book its jobs try out. Immutable.
 *
 * @param jobs how many jobs were run
 * @param rules every rule, table rows included, by position
 * @param settings every setting some rule proposes, in catalogue order
 */
public record Coverage(int jobs, List<RuleCoverage> rules, List<SettingCoverage> settings) {
	public Coverage {
		rules = List.copyOf(rules);
		settings = List.copyOf(settings);
	}

	/**
	 * Runs {@code jobs} without the rule engine and counts.
	 *
	 * @return empty when cancelled
	 */
	public static Optional<Coverage> of(Edition edition, List<JobCase> jobs, Progress progress) {
		record Ran(String path, Rehearsal rehearsal) {
		}
		AtomicInteger done = new AtomicInteger();
		List<Ran> ran = jobs.parallelStream().filter(j -> !progress.cancelled()).map(job -> {
			Rehearsal rehearsal = edition.rehearse(job.job());
			rehearsal.outcome();
			progress.done(done.incrementAndGet(), jobs.size());
			return new Ran(job.path(), rehearsal);
		}).toList();
		if (progress.cancelled() || ran.size() < jobs.size()) {
			return Optional.empty();
		}
		List<RuleCoverage> rules = edition.rules().parallelStream().map(rule -> {
			List<String> decided = new ArrayList<>();
			List<String> outranked = new ArrayList<>();
			List<String> heldOpen = new ArrayList<>();
			Points points = new Points(rule);
			for (Ran one : ran) {
				points.count(one.rehearsal);
				Truth truth = one.rehearsal.verdict(rule).truth();
				if (truth == Truth.TRUE) {
					(decides(rule, one.rehearsal.outcome()) ? decided : outranked).add(one.path);
				} else if (truth == Truth.UNKNOWN) {
					heldOpen.add(one.path);
				}
			}
			int silent = ran.size() - decided.size() - outranked.size() - heldOpen.size();
			return new RuleCoverage(rule, decided, outranked, silent, heldOpen, points.result());
		}).toList();
		return Optional.of(new Coverage(ran.size(), rules,
				settings(edition.rules(), ran.stream().map(r -> r.rehearsal.outcome()).toList())));
	}

	/** @return from 0 to 1; empty for a figure that coverage says nothing of */
	public Optional<Double> share(Figure figure) {
		return switch (figure) {
			case RULES_SPOKEN -> Optional.of(share(rules, r -> r.spoke() > 0));
			case RULES_DECIDING -> Optional.of(share(rules, r -> !r.decided().isEmpty()));
			case CONDITIONS_BOTH_WAYS -> Optional.of(share(rules.stream().flatMap(r -> r.conditions().stream()).toList(), ConditionCoverage::bothWays));
			case MISTAKES_CAUGHT -> Optional.empty();
		};
	}

	/** @return what became of {@code rule}, a rule of the edition this is of */
	public Optional<RuleCoverage> of(Rule rule) {
		return rules.stream().filter(r -> r.rule() == rule).findFirst();
	}

	private static <T> double share(List<T> all, Predicate<T> which) {
		return all.isEmpty() ? 1 : (double) all.stream().filter(which).count() / all.size();
	}

	private static boolean decides(Rule rule, Outcome outcome) {
		return rule.then().stream().anyMatch(a -> !(a instanceof Action.Propose)) || outcome.settings().stream()
				.anyMatch(s -> !s.proposals().isEmpty() && s.deciding().stream().anyMatch(p -> p.rule() == rule));
	}

	private static List<SettingCoverage> settings(List<Rule> rules, List<Outcome> outcomes) {
		Map<Setting, List<SettingOutcome>> came = new LinkedHashMap<>();
		rules.stream().flatMap(r -> r.then().stream()).filter(Action.Propose.class::isInstance).map(a -> ((Action.Propose) a).setting())
				.sorted(Comparator.comparing(Setting::label)).forEach(s -> came.putIfAbsent(s, new ArrayList<>()));
		outcomes.stream().flatMap(o -> o.settings().stream()).filter(s -> came.containsKey(s.setting())).forEach(s -> came.get(s.setting()).add(s));
		return came.entrySet().stream().map(e -> setting(e.getKey(), e.getValue())).toList();
	}

	private static SettingCoverage setting(Setting setting, List<SettingOutcome> came) {
		Map<String, Integer> counted = came.stream().flatMap(c -> c.value().stream())
				.collect(Collectors.toMap(v -> v.text(), v -> 1, Integer::sum));
		Map<String, Integer> sorted = new LinkedHashMap<>();
		counted.entrySet().stream().sorted(Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
				.forEach(e -> sorted.put(e.getKey(), e.getValue()));
		List<String> never = setting.domain().listed().stream().map(v -> v.text()).filter(t -> !counted.containsKey(t)).toList();
		int open = (int) came.stream().filter(c -> c.state() == State.GAP || c.state() == State.DISPUTED).count();
		return new SettingCoverage(setting, sorted, never, open);
	}
}
