package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.NotDone;
import org.setwright.trade.Trade;

/** The editions of the open book, found when first asked for, and let go when another book is opened. Thread-safe. */
final class OpenEditions {
	private Path folder;
	private EditionsOf editions;

	/** @return empty when the book lives in no repository */
	synchronized Optional<EditionsOf> of(Path book) throws NotDone {
		if (!book.equals(folder)) {
			close();
		}
		if (editions == null) {
			editions = EditionsOf.find(book, Trade.catalogue(), List.of()).orElse(null);
			folder = book;
		}
		return Optional.ofNullable(editions);
	}

	/** @return the same, where there have to be any */
	EditionsOf demand(Path book) throws NotDone {
		return of(book).orElseThrow(() -> new NotDone(Messages.OpenEditions_none, Messages.OpenEditions_begin));
	}

	/** Starts a repository in the folder of the book, unless it lives in one. */
	synchronized EditionsOf begin(Path book) throws NotDone {
		close();
		editions = EditionsOf.start(book, Trade.catalogue(), List.of());
		folder = book;
		return editions;
	}

	synchronized void close() {
		if (editions != null) {
			editions.close();
			editions = null;
		}
		folder = null;
	}
}
