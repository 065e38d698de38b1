package org.setwright.bench.hand;

import java.util.List;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.engine.Edition;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;

/**
 * What the bench stands on and never changes: a book as it is, and a saved job of it or none. Immutable.
 *
 * @param edition {@code book}, compiled
 * @param saved the job to begin with; empty to begin with nothing known
 */
public record Ground(Book book, Edition edition, Optional<JobCase> saved) {
	/** What stands for a place that is not in the book, but was typed. */
	public static final String BENCH = "the bench";

	/** @return the job case of which nothing is known */
	public static JobCase nothing() {
		return new JobCase("", "no job", "", Job.blank(), java.util.Map.of(), java.util.Map.of());
	}

	/** @return the same book beginning with the job in file {@code path}; with none when there is no such job */
	public Ground with(String path) {
		return new Ground(book, edition, book.jobs().stream().filter(j -> j.path().equals(path)).findFirst());
	}

	/** @return every fact and setting the book may speak of */
	public Catalogue catalogue() {
		return edition.catalogue();
	}

	/** @return every job of the book */
	public List<JobCase> jobs() {
		return book.jobs();
	}
}
