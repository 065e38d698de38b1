package org.setwright.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.NearestWay;
import org.setwright.engine.logic.Obstacle;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * One job under one edition as the evaluator alone sees it, kept so that the job under an amended book costs only what the
 * amendment touches. Thread-safe.
 */
public final class Rehearsal {
	private final List<Rule> rules;
	private final Map<Setting, List<Condition>> requirements;
	private final JobFacts job;
	private final Verdicts verdicts;
	private final Catalogue catalogue;
	private Outcome outcome;

	Rehearsal(List<Rule> rules, Map<Setting, List<Condition>> requirements, JobFacts job,
			Verdicts verdicts, Catalogue catalogue) {
		this.rules = rules;
		this.requirements = requirements;
		this.job = job;
		this.verdicts = verdicts;
		this.catalogue = catalogue;
	}

	/** @return what the job comes to, equal to what {@link Edition#run} says under the same rules */
	public synchronized Outcome outcome() {
		if (outcome == null) {
			outcome = new Run(rules, requirements, job, verdicts, catalogue).outcome();
		}
		return outcome;
	}

	/**
	 * The same job under an amended book.
	 *
	 * @param amendment of the edition this was rehearsed under
	 * @return this very rehearsal when the amendment touches nothing that matters to this job
	 */
	public Rehearsal under(Amendment amendment) {
		if (staysSilent(amendment)) {
			return this;
		}
		Verdicts after = verdicts.under(amendment.order(), amendment.kept());
		return touched(amendment, after) ? new Rehearsal(amendment.rules(), requirements, job, after, catalogue) : this;
	}

	/** @return what has become of each rule of this book, by its number; costs far less than the whole outcome */
	public List<Standing> standings() {
		return Standings.of(rules, job, verdicts);
	}

	/**
	 * What has become of each rule under an amended book, at the cost of what the amendment touches.
	 *
	 * @param amendment of the edition this was rehearsed under
	 * @param before what {@link #standings()} says
	 * @return by number of the rule in the amended book; empty when nothing differs for this job: rules left alone stand as before,
	 *         and new ones are silent
	 */
	public Optional<List<Standing>> standings(Amendment amendment, List<Standing> before) {
		if (staysSilent(amendment)) {
			return Optional.empty();
		}
		Verdicts after = verdicts.under(amendment.order(), amendment.kept());
		return touched(amendment, after) ? Optional.of(Standings.of(amendment, before, job, after)) : Optional.empty();
	}

	/** @return how trying {@code rule}, a rule of this book, came out */
	public Verdict verdict(Rule rule) {
		return verdicts.of(rule);
	}

	/** @return what stands between {@code rule}, a rule of this book, and speaking; empty when it speaks */
	public List<Obstacle> obstacles(Rule rule) {
		return NearestWay.obstacles(rule, job, verdicts::finding);
	}

	/** A quick look that settles most cases: nothing that goes spoke here, and nothing that comes does. */
	private boolean staysSilent(Amendment amendment) {
		return amendment.dropped().stream().noneMatch(r -> speaks(verdicts.of(r)))
				&& amendment.added().stream().noneMatch(r -> speaks(verdicts.trying(r)));
	}

	private boolean touched(Amendment amendment, Verdicts after) {
		return amendment.dropped().stream().anyMatch(r -> speaks(verdicts.of(r)))
				|| amendment.mayDiffer().stream().anyMatch(r -> differs(after.of(r), amendment.kept().get(r)));
	}

	private boolean differs(Verdict after, Rule before) {
		return before == null ? speaks(after) : after != verdicts.of(before) && !after.equals(verdicts.of(before));
	}

	private static boolean speaks(Verdict verdict) {
		return verdict.truth() != Truth.FALSE;
	}
}
