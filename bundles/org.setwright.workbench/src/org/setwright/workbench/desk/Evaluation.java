package org.setwright.workbench.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.Problem;
import org.setwright.engine.Compilation;
import org.setwright.engine.outcome.Outcome;

/**
 * A rule book with everything that follows from it: what is wrong with it, its compiled rules, and what each of its
 * jobs comes to. Immutable.
 *
 * @param book as read, with what is being typed in place of what is saved
 * @param rules its rules and tables compiled; mistakes in job files do not stop them
 * @param problems everything wrong with the book, by position
 * @param outcomes by path of the job; empty when the rules cannot run
 */
public record Evaluation(Book book, Compilation rules, List<Problem> problems, Map<String, Outcome> outcomes) {
	public Evaluation {
		problems = List.copyOf(problems);
		outcomes = Map.copyOf(outcomes);
	}

	/** @return what the job at {@code path} comes to; empty when it cannot be read or the rules cannot run */
	public Optional<Outcome> outcome(String path) {
		return Optional.ofNullable(outcomes.get(path));
	}

	/** @return the job at {@code path}; empty when it cannot be read */
	public Optional<JobCase> job(String path) {
		return book.jobs().stream().filter(j -> j.path().equals(path)).findFirst();
	}

	/** @return whether the rules can run */
	public boolean runs() {
		return rules.edition().isPresent();
	}

	/** @return what is wrong with the file at {@code path} */
	public List<Problem> problemsIn(String path) {
		return problems.stream().filter(p -> p.at().file().equals(path)).toList();
	}

	/** @return how many problems are errors */
	public long errors() {
		return problems.stream().filter(p -> p.severity() == Problem.Severity.ERROR).count();
	}
}
