package org.setwright.check.junit;

import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.platform.engine.EngineExecutionListener;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.TestExecutionResult;
import org.opentest4j.AssertionFailedError;
import org.setwright.book.Book;
import org.setwright.book.Problem;
import org.setwright.check.Progress;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.check.report.Telling;
import org.setwright.engine.Compilation;
import org.setwright.engine.Edition;

/** Compiles each book, runs its jobs, and tells how each test went. */
final class Execution {
	private final EngineExecutionListener listener;

	Execution(EngineExecutionListener listener) {
		this.listener = listener;
	}

	void run(TestDescriptor engine) {
		container(engine, () -> engine.getChildren().forEach(book -> container(book, () -> book((BookTests) book))));
	}

	private void book(BookTests tests) {
		Book book = tests.book();
		Compilation compilation = Edition.compile(book);
		for (TestDescriptor child : tests.getChildren()) {
			if (child instanceof JobTests job) {
				compilation.edition().ifPresentOrElse(e -> container(job, () -> job(job, e)),
						() -> listener.executionSkipped(job, "Nothing runs until the errors of the book are mended."));
			} else {
				test(child, sound(compilation));
			}
		}
	}

	private static Optional<Throwable> sound(Compilation compilation) {
		String errors = compilation.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).map(Problem::toString)
				.collect(Collectors.joining("\n"));
		return errors.isEmpty() ? Optional.empty() : Optional.of(new AssertionFailedError("The book has errors:\n" + errors));
	}

	private void job(JobTests tests, Edition edition) {
		CheckedJob checked = CaseCheck.of(edition, java.util.List.of(tests.job()), Progress.UNWATCHED, false).orElseThrow().jobs().get(0);
		tests.getChildren().forEach(child -> test(child, fault(checked, child.getDisplayName())));
	}

	/** @return why the point is not met, with the reasons of what it came to */
	private static Optional<Throwable> fault(CheckedJob checked, String what) {
		if (checked.outcome().isEmpty()) {
			return Optional.of(new IllegalStateException(checked.fault()));
		}
		Point point = checked.asked().stream().filter(p -> p.what().equals(what)).findFirst().orElseThrow();
		return point.met() ? Optional.empty() : Optional.of(new AssertionFailedError(checked.job().name() + ", " + what + ": " + point.sentence() + " ("
				+ point.at() + ")\n" + Telling.text(point, checked.job()), point.expected(), point.came()));
	}

	private void container(TestDescriptor container, Runnable inside) {
		listener.executionStarted(container);
		inside.run();
		listener.executionFinished(container, TestExecutionResult.successful());
	}

	private void test(TestDescriptor test, Optional<Throwable> fault) {
		listener.executionStarted(test);
		listener.executionFinished(test, fault.map(TestExecutionResult::failed).orElse(TestExecutionResult.successful()));
	}
}
