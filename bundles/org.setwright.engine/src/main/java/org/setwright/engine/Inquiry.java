package org.setwright.engine;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.change.Sensitivity;
import org.setwright.engine.change.Watch;
import org.setwright.engine.change.WhatIf;
import org.setwright.engine.explaining.Bases;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.whynot.Parting;
import org.setwright.engine.whynot.Silence;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Questions about one job under one edition: why not, what would change it, what matters most. Immutable. */
public final class Inquiry {
	private final Edition edition;
	private final Catalogue catalogue;
	private final FindingOrder order;
	private final Job job;
	private final Outcome outcome;
	private final Silence silence;

	Inquiry(Edition edition, Catalogue catalogue, FindingOrder order, Job job) {
		this.edition = edition;
		this.catalogue = catalogue;
		this.order = order;
		this.job = job;
		outcome = edition.run(job);
		JobFacts facts = new JobFacts(outcome.job(), catalogue);
		silence = new Silence(new Verdicts(order, facts), new Bases(facts, catalogue), facts, outcome);
	}

	/** @return what the job comes to */
	public Outcome outcome() {
		return outcome;
	}

	/** @return what became of {@code rule}, a rule of this edition */
	public WhyNot whyNot(Rule rule) {
		return silence.of(rule);
	}

	/** @return what became of every rule, by position */
	public List<WhyNot> ofEveryRule() {
		return edition.rules().stream().map(silence::of).toList();
	}

	/** @return what became of every rule that could propose {@code value} for {@code setting} */
	public List<WhyNot> whyNot(Setting setting, Value value) {
		return edition.rules().stream().filter(r -> couldPropose(r, setting, value)).map(silence::of).toList();
	}

	/** @return the smallest changes by which {@code rule} would speak, those possible on site first; empty when it does */
	public Alternatives toFire(Rule rule, Watch watch) {
		return whyNot(rule).blockers().isEmpty() ? Alternatives.NONE_NEEDED
				: new WhatIf(catalogue, order, edition::run).toFire(job, rule, watch);
	}

	/** @return the smallest changes by which {@code setting} would settle at {@code value}; empty when it does */
	public Alternatives toSettle(Setting setting, Value value, Watch watch) {
		boolean settled = outcome.setting(setting).flatMap(s -> s.value()).filter(value::same).isPresent();
		return settled ? Alternatives.NONE_NEEDED : new WhatIf(catalogue, order, edition::run).toSettle(job, setting, value, watch);
	}

	/** @return the stated answers that would change a setting if they were wrong, the one that changes most first */
	public List<Sensitivity> whatMatters(BooleanSupplier cancelled) {
		return Sensitivity.of(job, catalogue, order, edition::run, cancelled);
	}

	/** @return why {@code setting} comes to something else on {@code other}, a question about another job of this edition */
	public Parting comparedWith(Inquiry other, Setting setting) {
		return Parting.of(setting, outcome, silence, other.outcome, other.silence);
	}

	private static boolean couldPropose(Rule rule, Setting setting, Value value) {
		return rule.proposals(setting).stream().anyMatch(p -> !(p.value() instanceof Operand.Literal literal && !literal.value().same(value)));
	}
}
