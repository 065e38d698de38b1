package org.setwright.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.setwright.book.Book;
import org.setwright.book.Problem;
import org.setwright.engine.change.Telltale;
import org.setwright.engine.change.TellingApart;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.ExpectedNames;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.running.Decides;
import org.setwright.engine.running.Patched;
import org.setwright.engine.running.Program;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;

/** A rule book compiled and ready to run. Immutable; one edition may run many jobs at once from many threads. */
public final class Edition {
	private final Catalogue catalogue;
	private final List<Rule> rules;
	private final FindingOrder order;
	private final Map<Setting, List<Condition>> requirements;
	private Decides program;

	private Edition(Catalogue catalogue, List<Rule> rules, FindingOrder order) {
		this.catalogue = catalogue;
		this.rules = List.copyOf(rules);
		this.order = order;
		requirements = Needs.of(catalogue);
	}

	/** Compiling for the rule engine costs most, and rehearsals do without. */
	private synchronized Decides program() {
		if (program == null) {
			program = Program.compile(rules, order, catalogue);
		}
		return program;
	}

	private Edition compiled() {
		program();
		return this;
	}

	/**
	 * An edition for rehearsals. It can do all an edition can; it is compiled for the rule engine when a job is first run.
	 *
	 * @param rules without faults, by position
	 * @return empty when the rules do not go together, see {@link Reading#together}
	 */
	public static Optional<Edition> ofRules(List<Rule> rules, Catalogue catalogue) {
		return Reading.together(rules).isEmpty() ? Optional.of(new Edition(catalogue, rules, FindingOrder.of(rules))) : Optional.empty();
	}

	/** Checks and compiles {@code book} against the facts and settings it may speak of. Never throws for what a book contains. */
	public static Compilation compile(Book book) {
		Reading reading = Reading.of(book);
		List<Problem> problems = new ArrayList<>(book.problems());
		problems.addAll(reading.problems());
		List<Rule> rules = reading.rules();
		FindingOrder order = FindingOrder.of(rules);
		if (problems.stream().noneMatch(Edition::isError)) {
			problems.addAll(order.problems());
			problems.addAll(ExpectedNames.check(book.jobs(), rules));
		}
		problems.sort(Comparator.comparing(Problem::at));
		return new Compilation(problems.stream().anyMatch(Edition::isError) ? Optional.empty()
				: Optional.of(new Edition(book.catalogue(), rules, order).compiled()), problems);
	}

	/** @return every fact and setting its rules may speak of */
	public Catalogue catalogue() {
		return catalogue;
	}

	/** @return the rules, table rows included, by position */
	public List<Rule> rules() {
		return rules;
	}

	/** @return the rule called {@code name}, or empty */
	public Optional<Rule> rule(String name) {
		return rules.stream().filter(r -> r.name().equals(name)).findFirst();
	}

	/**
	 * Runs one job.
	 *
	 * @param job the facts as stated; calculated facts are added here
	 * @throws Disagreement when the rule engine and the evaluator differ
	 */
	public Outcome run(Job job) {
		JobFacts facts = facts(job);
		return new Run(rules, requirements, facts, new Verdicts(order, facts), catalogue).outcome(program().fired(facts));
	}

	/**
	 * Runs one job without the rule engine, so that small amendments of the book can be tried on it at little cost. What it
	 * comes to is what {@link #run} would say; only {@code run} has it confirmed by the rule engine.
	 */
	public Rehearsal rehearse(Job job) {
		JobFacts facts = facts(job);
		return new Rehearsal(rules, requirements, facts, new Verdicts(order, facts), catalogue);
	}

	/** @return this book with {@code rule}, one of its own, replaced by others, or left out when there are none */
	public Amendment amend(Rule rule, Rule... others) {
		return Amendment.replacing(rules, rule, List.of(others));
	}

	/**
	 * @param after the rules of the amended book; those that read as before count as left alone, wherever they stand now. What is
	 *            told of them names the place where they stood.
	 * @return this book with those rules instead of its own
	 */
	public Amendment amend(List<Rule> after) {
		return Amendment.between(rules, after);
	}

	/**
	 * @param amendment of this edition
	 * @return the amended book, ready for the rule engine; only what the amendment can change is compiled anew
	 */
	public Edition under(Amendment amendment) {
		Edition amended = new Edition(catalogue, amendment.rules(), amendment.order());
		amended.program = Patched.of(program(), amended.rules, amendment.order(), amendment.mayDiffer(), amendment::before, catalogue);
		return amended;
	}

	/**
	 * Looks for a job on which this book and an amended one come to different results; a job on which only findings differ is
	 * taken when there is no other.
	 *
	 * @param starts jobs to start from, for example the saved ones
	 * @return empty when none was found, which proves nothing
	 */
	public Optional<Telltale> tellApart(Amendment amendment, List<Job> starts, BooleanSupplier cancelled) {
		Optional<Telltale> shown = tellApart(amendment, starts, false, cancelled);
		boolean finds = Stream.concat(amendment.dropped().stream(), amendment.added().stream()).anyMatch(r -> !r.finds().isEmpty());
		return shown.isPresent() || !finds ? shown : tellApart(amendment, starts, true, cancelled);
	}

	private Optional<Telltale> tellApart(Amendment amendment, List<Job> starts, boolean findings, BooleanSupplier cancelled) {
		return new TellingApart(catalogue, order, amendment.dropped(), amendment.added(), job -> {
			Rehearsal before = rehearse(job);
			Rehearsal after = before.under(amendment);
			return before == after ? Optional.empty() : Telltale.of(job, before.outcome(), after.outcome(), findings);
		}).from(starts, cancelled);
	}

	private JobFacts facts(Job job) {
		return new JobFacts(catalogue.withCalculations(job), catalogue);
	}

	/** @return the questions that can be asked about {@code job}; runs it once */
	public Inquiry about(Job job) {
		return new Inquiry(this, catalogue, order, job);
	}

	private static boolean isError(Problem problem) {
		return problem.severity() == Problem.Severity.ERROR;
	}
}
