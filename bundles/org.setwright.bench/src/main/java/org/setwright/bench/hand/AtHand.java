package org.setwright.bench.hand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.book.Position;
import org.setwright.engine.Amendment;
import org.setwright.engine.Edition;
import org.setwright.engine.Inquiry;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.JobField;

/** The book and the job as they are on the bench after some lines, and what they come to. Immutable. */
public final class AtHand {
	private final Ground ground;
	private final JobCase job;
	private final List<JobEdit> edits;
	private final Map<String, Rule> typed;
	private final List<Rule> dropped;
	private final Edition edition;
	private final Inquiry inquiry;

	private AtHand(Ground ground, JobCase job, List<JobEdit> edits, Map<String, Rule> typed, List<Rule> dropped, Edition edition) {
		this.ground = ground;
		this.job = job;
		this.edits = List.copyOf(edits);
		this.typed = typed;
		this.dropped = List.copyOf(dropped);
		this.edition = edition;
		inquiry = edition.about(job.job());
	}

	/** @return {@code ground} with nothing tried yet */
	public static AtHand of(Ground ground) {
		return new AtHand(ground, ground.saved().orElseGet(Ground::nothing), List.of(), Map.of(), List.of(), ground.edition());
	}

	/** @return the book and job it all began with */
	public Ground ground() {
		return ground;
	}

	/** @return the job as changed; its expectations too */
	public JobCase job() {
		return job;
	}

	/** @return the job as its file says it; empty when it is in no file */
	public Optional<JobCase> saved() {
		return ground.jobs().stream().filter(j -> j.path().equals(job.path())).findFirst();
	}

	/** @return what was changed in the job, in that order */
	public List<JobEdit> edits() {
		return edits;
	}

	/** @return the rules typed and in force, in the order they were typed */
	public List<Rule> typed() {
		return List.copyOf(typed.values());
	}

	/** @return the rules of the book that are not in force */
	public List<Rule> dropped() {
		return dropped;
	}

	/** @return the rules in force */
	public List<Rule> rules() {
		return edition.rules();
	}

	/** @return the book as changed */
	public Edition edition() {
		return edition;
	}

	/** @return what can be asked about the job under the book, both as changed */
	public Inquiry inquiry() {
		return inquiry;
	}

	/** @return what the job comes to, as the rule engine says */
	public Outcome outcome() {
		return inquiry.outcome();
	}

	/** @return how the book as changed differs from the book */
	public Amendment amendment() {
		return ground.edition().amend(edition.rules());
	}

	/** @return the rules that would be in force, were {@code rule} in force besides, in place of any of the same name */
	public List<Rule> rulesWith(Rule rule) {
		List<Rule> rules = new ArrayList<>();
		boolean placed = false;
		for (Rule each : rules()) {
			boolean same = each.name().equals(rule.name());
			placed |= same;
			rules.add(same ? rule : each);
		}
		if (!placed) {
			rules.add(rule);
		}
		return rules;
	}

	/** @return the rules that would be in force without {@code rule} */
	public List<Rule> rulesWithout(Rule rule) {
		return rules().stream().filter(r -> r != rule).toList();
	}

	/** @return the same book with another job, nothing of it changed */
	public AtHand on(JobCase other) {
		return new AtHand(ground, other, List.of(), typed, dropped, edition);
	}

	/**
	 * @return the same with {@code changes} made to the job; itself when they change nothing
	 * @throws JobNotWritten when one of them makes no sense for this job
	 */
	public AtHand with(List<JobEdit> changes) throws JobNotWritten {
		JobCase changed = job;
		List<JobEdit> made = new ArrayList<>(edits);
		for (JobEdit change : changes) {
			JobCase next = JobWriter.edited(changed, change);
			if (next != changed) {
				made.add(change);
				changed = moved(next, change);
			}
		}
		return changed == job ? this : new AtHand(ground, changed, made, typed, dropped, edition);
	}

	/** @return the same with {@code rule} in force, in place of any of the same name; itself when the book says the same */
	public AtHand with(Rule rule) {
		if (rules().stream().anyMatch(r -> r.name().equals(rule.name()) && r.text().equals(rule.text()))) {
			return this;
		}
		Map<String, Rule> rules = new LinkedHashMap<>(typed);
		rules.put(rule.name(), rule);
		return ruled(rules, droppedFor(rule), rulesWith(rule));
	}

	/** @return the same without {@code rule}, which is in force */
	public AtHand without(Rule rule) {
		Map<String, Rule> rules = new LinkedHashMap<>(typed);
		boolean own = rules.remove(rule.name()) != null;
		List<Rule> gone = new ArrayList<>(dropped);
		if (!own) {
			gone.add(rule);
		}
		return ruled(rules, gone, rulesWithout(rule));
	}

	private AtHand ruled(Map<String, Rule> rules, List<Rule> gone, List<Rule> all) {
		Edition changed = rules.isEmpty() && gone.isEmpty() ? ground.edition() : ground.edition().under(ground.edition().amend(all));
		return new AtHand(ground, job, edits, rules, gone, changed);
	}

	private List<Rule> droppedFor(Rule rule) {
		List<Rule> gone = new ArrayList<>(dropped);
		ground.edition().rule(rule.name()).filter(r -> !gone.contains(r)).ifPresent(gone::add);
		return gone;
	}

	/** What was changed no longer stands where the file has it. */
	private static JobCase moved(JobCase changed, JobEdit change) {
		Map<JobField, Position> positions = new HashMap<>(changed.positions());
		if (change instanceof JobEdit.Answered answered) {
			positions.put(answered.at(), Position.whole(Ground.BENCH));
		} else if (change instanceof JobEdit.Fitted fitted) {
			positions.keySet().removeIf(p -> p.kind() == fitted.kind());
			positions.put(JobField.presence(fitted.kind()), Position.whole(Ground.BENCH));
		} else if (change instanceof JobEdit.Removed removed) {
			positions.keySet().removeIf(p -> p.kind() == removed.kind() && p.field().isPresent() && p.item() >= removed.item());
		}
		return new JobCase(changed.path(), changed.name(), changed.notes(), changed.job(), changed.expected(), changed.items(),
				changed.accepted(), positions);
	}
}
