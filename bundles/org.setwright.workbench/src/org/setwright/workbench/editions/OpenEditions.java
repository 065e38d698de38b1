package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.NotDone;
import org.setwright.trade.Trade;

/**
 * The editions of every book that was looked at, found when first asked for. They are let go together, because a question about
 * the book before may still be on its way when another is opened. Thread-safe.
 */
final class OpenEditions {
	private final Map<Path, EditionsOf> byFolder = new HashMap<>();

	/** @return empty when the book lives in no repository */
	synchronized Optional<EditionsOf> of(Path book) throws NotDone {
		EditionsOf known = byFolder.get(book);
		if (known == null) {
			known = EditionsOf.find(book, Trade.catalogue(), List.of()).orElse(null);
			if (known != null) {
				byFolder.put(book, known);
			}
		}
		return Optional.ofNullable(known);
	}

	/** @return the same, where there have to be any */
	EditionsOf demand(Path book) throws NotDone {
		return of(book).orElseThrow(() -> new NotDone(Messages.OpenEditions_none, Messages.OpenEditions_begin));
	}

	/** Starts a repository in the folder of the book, unless it lives in one. */
	synchronized EditionsOf begin(Path book) throws NotDone {
		EditionsOf begun = EditionsOf.start(book, Trade.catalogue(), List.of());
		byFolder.put(book, begun);
		return begun;
	}

	synchronized void close() {
		byFolder.values().forEach(EditionsOf::close);
		byFolder.clear();
	}
}
