package org.setwright.engine;

import java.util.List;
import org.setwright.book.Book;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;

/** A rule book compiled and ready to run. Immutable; one edition may run many jobs at once from many threads. */
public final class Edition {
	private final List<Rule> rules;

	private Edition(List<Rule> rules) {
		this.rules = List.copyOf(rules);
	}

	/** Checks and compiles {@code book} against {@code catalogue}. Never throws for what a book contains. */
	public static Compilation compile(Book book, Catalogue catalogue) {
		throw new UnsupportedOperationException();
	}

	/** @return the rules, table rows included, by position */
	public List<Rule> rules() {
		return rules;
	}

	/** Runs one job. */
	public Outcome run(Job job) {
		throw new UnsupportedOperationException();
	}
}
