package org.setwright.engine.startup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Line;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.StartUpPhase;

/**
 * Collects what the rules of one job want proved at start-up. What is said depends on facts and findings alone; settings
 * are only read into the words, so the order of rules still does not matter.
 */
public final class CheckList {
	/** What makes two checks the same for people. */
	private record Said(StartUpPhase phase, Line callFor, Line see, Line ifNot, Optional<Line> pause) {
	}

	private static final class By {
		private final List<Rule> rules = new ArrayList<>();
		private final List<Firing> firings = new ArrayList<>();
		private Set<JobField> heldBy = Set.of();
	}

	private final Reader reader;
	private final Map<Said, By> checks = new LinkedHashMap<>();

	/** @param settings what the settings came to, to be read into the words */
	public CheckList(JobFacts job, List<SettingOutcome> settings) {
		reader = new Reader(job, settings.stream().collect(Collectors.toMap(SettingOutcome::setting, Function.identity())));
	}

	/** Adds what {@code firing} asks for, its rule's conditions holding in this {@code way}. */
	public void certain(Firing firing, Verdict.Way way) {
		for (Said said : said(firing.rule(), way.values())) {
			By by = checks.computeIfAbsent(said, x -> new By());
			by.firings.add(firing);
			if (!by.rules.contains(firing.rule())) {
				by.rules.add(firing.rule());
			}
		}
	}

	/** Adds what a rule would ask for were it not held open, unless it is asked for already. */
	public void perhaps(HeldOpen held) {
		for (Said said : said(held.rule(), Map.of())) {
			if (!checks.containsKey(said)) {
				By by = new By();
				by.rules.add(held.rule());
				by.heldBy = held.by();
				checks.put(said, by);
			}
		}
	}

	/** @return the checks in the order of a start-up; within a phase what is certain comes first, then by book order */
	public List<StartUpCheck> inOrder() {
		return checks.entrySet().stream().map(e -> check(e.getKey(), e.getValue()))
				.sorted(Comparator.comparing(StartUpCheck::phase).thenComparing(c -> !c.certain())).toList();
	}

	private static StartUpCheck check(Said said, By by) {
		return new StartUpCheck(said.phase(), said.callFor(), said.see(), said.ifNot(), said.pause(), by.rules, by.firings, by.heldBy);
	}

	private List<Said> said(Rule rule, Map<Operand.Bound, JobField> places) {
		return rule.then().stream().filter(Action.StartUp.class::isInstance).map(Action.StartUp.class::cast)
				.map(c -> new Said(c.phase(), reader.line(c.callFor(), places), reader.line(c.see(), places),
						reader.line(c.ifNot(), places), c.pause().map(w -> reader.line(w, places))))
				.toList();
	}
}
