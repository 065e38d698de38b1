package org.setwright.command.editions;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.setwright.book.Book;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.BookOption;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Mixin;

/** A word about the editions of a book. */
public abstract class EditionsQuestion implements Callable<Integer> {
	private final Surroundings surroundings;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	protected EditionsQuestion(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	/** @return the answer */
	protected abstract Report report(Book open, EditionsOf editions) throws NotDone;

	/** @return where the program runs */
	protected final Surroundings at() {
		return surroundings;
	}

	/** @return the editions of the book in {@code folder} */
	protected EditionsOf editions(Path folder) throws NotDone {
		return EditionsOf.find(folder, surroundings.catalogue(), EditionState.ceilings(surroundings))
				.orElseThrow(() -> Refusal.couldNotRun("This book lives in no repository yet, so it has no editions. Type keep --begin to start one."));
	}

	@Override
	public Integer call() {
		try (EditionsOf editions = editions(book.folder())) {
			return delivery.deliver(report(book.read(), editions));
		} catch (NotDone refused) {
			throw Refusal.couldNotRun(refused.getMessage());
		}
	}

	/** Prints {@code report}. @return its exit code */
	protected final int deliver(Report report) {
		return delivery.deliver(report);
	}
}
