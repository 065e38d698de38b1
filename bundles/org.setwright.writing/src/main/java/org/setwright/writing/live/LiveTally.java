package org.setwright.writing.live;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.Problem;
import org.setwright.engine.Amendment;
import org.setwright.engine.Edition;
import org.setwright.engine.Reading;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.Standing;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Catalogue;

/**
 * Counts again after every change of a book. Only files that have changed are read, and only rules that have changed are tried
 * again, on the jobs they matter to. What it counts is what the evaluator says; the outcomes shown for a job are always those that
 * the rule engine has confirmed. Thread-safe, one count at a time.
 */
public final class LiveTally {
	/** With more changes than these the jobs are tried afresh, because each of them is tried as an exception from then on. */
	private static final int MOST_CHANGES = 60;
	private Reading reading;
	private Catalogue catalogue;
	private Understood understood = Understood.NOTHING;
	private Edition base;
	private Map<String, Tried> tried = new ConcurrentHashMap<>();
	private Tally last = Tally.NONE;

	/** A job as the book before the changes takes it. */
	private record Tried(JobCase job, Rehearsal rehearsal, List<Standing> standings) {
	}

	/** @param trade which facts and settings there are, apart from those a book adds */
	public LiveTally(Catalogue trade) {
		catalogue = trade;
		reading = Reading.of(Book.empty(java.nio.file.Path.of(""), trade));
	}

	/**
	 * @param book as it reads now, half-written rules and all
	 * @param cancelled asked again and again; true ends the count
	 * @return what becomes of its rules on its jobs; empty when cancelled
	 */
	public synchronized Optional<Tally> count(Book book, BooleanSupplier cancelled) {
		reading = reading.with(book);
		if (!book.catalogue().equals(catalogue)) {
			catalogue = book.catalogue();
			base = null;
		}
		Understood now = understood.then(book, reading);
		List<Rule> rules = now.rules();
		Optional<Amendment> amendment = amendment(rules);
		if (amendment.isEmpty()) {
			List<Problem> why = Reading.together(rules);
			last = last.outOfDate(why.get(0).what() + " " + why.get(0).remedy());
			return Optional.of(last);
		}
		List<Tally.Job> jobs = book.jobs().parallelStream().filter(j -> !cancelled.getAsBoolean()).map(j -> job(j, amendment.get())).toList();
		if (cancelled.getAsBoolean()) {
			return Optional.empty();
		}
		understood = now;
		last = new Tally(numbered(now, rules, amendment.get()), jobs, Optional.empty());
		return Optional.of(last);
	}

	/** @return how {@code rules} differ from those the jobs were tried with; empty when they do not go together */
	private Optional<Amendment> amendment(List<Rule> rules) {
		Optional<Amendment> changes = Optional.ofNullable(base).map(b -> b.amend(rules));
		if (changes.filter(c -> c.size() <= MOST_CHANGES).isPresent()) {
			return changes.filter(c -> c.problems().isEmpty());
		}
		Optional<Edition> fresh = Edition.ofRules(rules, catalogue);
		fresh.ifPresent(edition -> {
			base = edition;
			tried = new ConcurrentHashMap<>();
		});
		return fresh.map(edition -> edition.amend(rules));
	}

	private Tally.Job job(JobCase job, Amendment amendment) {
		Tried before = tried.get(job.path());
		if (before == null || before.job != job && !before.job.job().equals(job.job())) {
			Rehearsal rehearsal = base.rehearse(job.job());
			before = new Tried(job, rehearsal, rehearsal.standings());
			tried.put(job.path(), before);
		}
		Optional<List<Standing>> after = before.rehearsal.standings(amendment, before.standings);
		return new Tally.Job(job.path(), after.orElse(before.standings), after.isPresent());
	}

	private Tally.Rules numbered(Understood now, List<Rule> rules, Amendment amendment) {
		Map<Rule, Integer> numbers = new IdentityHashMap<>();
		List<Integer> before = new ArrayList<>();
		Map<String, Tally.Shown> shown = new HashMap<>();
		for (Rule rule : rules) {
			int number = numbers.size();
			before.add(amendment.before(number));
			shown.put(rule.name(), new Tally.Shown(number, false));
			numbers.put(rule, number);
		}
		now.standIns().forEach((name, rule) -> {
			shown.remove(rule.name());
			shown.put(name, new Tally.Shown(numbers.get(rule), true));
		});
		return new Tally.Rules(before, shown);
	}
}
