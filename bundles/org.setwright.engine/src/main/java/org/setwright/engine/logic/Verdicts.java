package org.setwright.engine.logic;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.JobField;

/** Every rule of a book tried on one job, those that make findings before those that ask for them. */
public final class Verdicts {
	private final FindingOrder order;
	private final JobFacts job;
	private final Map<Rule, Verdict> verdicts = new IdentityHashMap<>();

	/** Tries all rules of {@code order} on {@code job}. */
	public Verdicts(FindingOrder order, JobFacts job) {
		this(order, job, order.sequence());
	}

	/** Tries some rules only. @param rules in the order of {@code order}, with all makers of findings they ask for */
	public Verdicts(FindingOrder order, JobFacts job, List<Rule> rules) {
		this.order = order;
		this.job = job;
		for (Rule rule : rules) {
			verdicts.put(rule, Trial.of(rule, job, this::finding));
		}
	}

	/**
	 * The same job under an amended book. Only rules that are new, or that ask for a finding which comes out differently, are
	 * tried again.
	 *
	 * @param amended the order of the amended book
	 * @param kept what each rule was that the amendment leaves alone, by what it is now
	 */
	public Verdicts under(FindingOrder amended, Map<Rule, Rule> kept) {
		Verdicts after = new Verdicts(amended, job, List.of());
		Map<String, Boolean> moved = new HashMap<>();
		for (Rule rule : amended.sequence()) {
			Rule before = kept.get(rule);
			boolean again = before == null || amended.asked(rule).stream()
					.anyMatch(f -> moved.computeIfAbsent(f, x -> !finding(x).equals(after.finding(x))));
			after.verdicts.put(rule, again ? Trial.of(rule, job, after::finding) : verdicts.get(before));
		}
		return after;
	}

	/** @return what trying {@code rule} gave */
	public Verdict of(Rule rule) {
		return verdicts.get(rule);
	}

	/** @return the rules that make {@code finding} */
	public List<Rule> makers(String finding) {
		return order.makers(finding);
	}

	/** @return whether {@code finding} is made, might be made, or is not */
	public Verdict finding(String finding) {
		Truth truth = Truth.FALSE;
		Set<JobField> unknowns = new LinkedHashSet<>();
		for (Rule maker : order.makers(finding)) {
			Verdict made = verdicts.get(maker);
			truth = truth.or(made.truth());
			unknowns.addAll(made.unknowns());
		}
		return new Verdict(truth, List.of(), truth == Truth.UNKNOWN ? unknowns : Set.of());
	}
}
