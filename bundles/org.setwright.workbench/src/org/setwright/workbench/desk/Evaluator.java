package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.engine.Compilation;
import org.setwright.engine.Disagreement;
import org.setwright.engine.Edition;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Catalogue;

/** Works out everything that follows from a rule book: folder, then book, then compiled rules, then outcomes. */
final class Evaluator {
	private final Catalogue catalogue;

	Evaluator(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/**
	 * @param previous whose compiled rules and outcomes are taken over where nothing changed
	 * @param dropped asked now and then; true ends the work
	 * @return empty when dropped
	 */
	Optional<Evaluation> evaluate(Path folder, Drafts drafts, Optional<Evaluation> previous, BooleanSupplier dropped) {
		Book book = new DraftedBook(catalogue).of(BookReader.read(folder, catalogue), drafts);
		if (dropped.getAsBoolean()) {
			return Optional.empty();
		}
		Compilation rules = previous.filter(p -> sameRules(p.book(), book)).map(Evaluation::rules)
				.orElseGet(() -> Edition.compile(withoutJobs(book), catalogue));
		Map<String, Outcome> outcomes = new LinkedHashMap<>();
		List<Problem> disagreed = new ArrayList<>();
		for (JobCase job : rules.edition().isPresent() ? book.jobs() : List.<JobCase>of()) {
			if (dropped.getAsBoolean()) {
				return Optional.empty();
			}
			try {
				outcomes.put(job.path(), previous.flatMap(p -> kept(p, rules, job))
						.orElseGet(() -> rules.edition().orElseThrow().run(job.job())));
			} catch (Disagreement none) {
				disagreed.add(Problem.error(Position.whole(job.path()), none.getMessage(), Messages.Evaluator_disagreed));
			}
		}
		return Optional.of(new Evaluation(book, rules, problems(book, rules, disagreed), outcomes));
	}

	/** Mistakes in a job file concern that job alone: the rules are compiled without the jobs. */
	private static Book withoutJobs(Book book) {
		return new Book(book.folder(), book.name(), book.description(), book.ruleFiles(), book.tables(), List.of(),
				book.problems().stream().filter(p -> !isJob(p.at().file())).toList());
	}

	private static boolean sameRules(Book before, Book now) {
		Book old = withoutJobs(before);
		Book fresh = withoutJobs(now);
		return old.equals(fresh);
	}

	private static Optional<Outcome> kept(Evaluation previous, Compilation rules, JobCase job) {
		return previous.rules() != rules ? Optional.empty()
				: previous.job(job.path()).filter(p -> p.job().equals(job.job())).flatMap(p -> previous.outcome(job.path()));
	}

	private static List<Problem> problems(Book book, Compilation rules, List<Problem> more) {
		List<Problem> all = new ArrayList<>(more);
		book.problems().stream().filter(p -> isJob(p.at().file())).forEach(all::add);
		rules.problems().stream().filter(p -> !all.contains(p)).forEach(all::add);
		all.sort(Comparator.comparing(Problem::at));
		return all;
	}

	private static boolean isJob(String path) {
		return path.startsWith("jobs/"); //$NON-NLS-1$
	}
}
