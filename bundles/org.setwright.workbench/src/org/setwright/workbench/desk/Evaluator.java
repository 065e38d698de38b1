package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
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
	private final Catalogue trade;

	/** @param trade which facts and settings there are, apart from those a book adds */
	Evaluator(Catalogue trade) {
		this.trade = trade;
	}

	/** Somebody who watches the work. Called from several threads at once. */
	interface Watch {
		/** @return whether the work is to be dropped; asked now and then */
		boolean dropped();

		/** Told after every job. @param done so far @param all how many there are */
		default void ran(int done, int all) {
			// not everybody wants to know
		}
	}

	/**
	 * @param previous whose compiled rules and outcomes are taken over where nothing changed
	 * @return empty when dropped
	 */
	Optional<Evaluation> evaluate(Path folder, Drafts drafts, Optional<Evaluation> previous, Watch watch) {
		Book book = BookReader.read(folder, trade, drafts.texts());
		if (watch.dropped()) {
			return Optional.empty();
		}
		Compilation rules = previous.filter(p -> sameRules(p.book(), book)).map(Evaluation::rules)
				.orElseGet(() -> Edition.compile(withoutJobs(book)));
		if (watch.dropped()) {
			return Optional.empty();
		}
		AtomicInteger done = new AtomicInteger();
		List<Ran> ran = rules.edition().map(edition -> book.jobs().parallelStream().filter(job -> !watch.dropped()).map(job -> {
			Ran one = previous.flatMap(p -> kept(p, rules, job)).map(o -> new Ran(job, Optional.of(o), Optional.empty())).orElseGet(() -> run(edition, job));
			watch.ran(done.incrementAndGet(), book.jobs().size());
			return one;
		}).toList()).orElse(List.of());
		return watch.dropped() ? Optional.empty()
				: Optional.of(new Evaluation(book, rules, problems(book, rules, ran), outcomes(ran)));
	}

	/** What running one job gave. */
	private record Ran(JobCase job, Optional<Outcome> outcome, Optional<Problem> problem) {
	}

	private static Ran run(Edition edition, JobCase job) {
		try {
			return new Ran(job, Optional.of(edition.run(job.job())), Optional.empty());
		} catch (Disagreement none) {
			Problem problem = Problem.error(Position.whole(job.path()), none.getMessage(), Messages.Evaluator_disagreed);
			return new Ran(job, Optional.empty(), Optional.of(problem));
		}
	}

	private static Map<String, Outcome> outcomes(List<Ran> ran) {
		return ran.stream().filter(r -> r.outcome().isPresent())
				.collect(Collectors.toMap(r -> r.job().path(), r -> r.outcome().orElseThrow()));
	}

	/** Mistakes in a job file concern that job alone: the rules are compiled without the jobs. */
	private static Book withoutJobs(Book book) {
		return book.with(book.ruleFiles(), book.tables(), List.of()).withProblems(book.problems().stream().filter(p -> !isJob(p.at().file())).toList());
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

	private static List<Problem> problems(Book book, Compilation rules, List<Ran> ran) {
		List<Problem> all = new ArrayList<>(ran.stream().flatMap(r -> r.problem().stream()).toList());
		book.problems().stream().filter(p -> isJob(p.at().file())).forEach(all::add);
		rules.problems().stream().filter(p -> !all.contains(p)).forEach(all::add);
		all.sort(Comparator.comparing(Problem::at));
		return all;
	}

	private static boolean isJob(String path) {
		return path.startsWith("jobs/"); //$NON-NLS-1$
	}
}
