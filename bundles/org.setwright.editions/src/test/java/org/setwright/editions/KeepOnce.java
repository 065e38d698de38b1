package org.setwright.editions;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.setwright.editions.kept.NotDone;
import org.setwright.trade.Trade;

/** Keeps the work in hand of a book in a process of its own, which may be cut off. */
final class KeepOnce {
	private KeepOnce() {
	}

	/** @param words the folder of the book, and the message */
	public static void main(String[] words) throws IOException {
		Files.writeString(Path.of(words[0], ".git", "keeping"), Long.toString(ProcessHandle.current().pid()));
		try (EditionsOf editions = EditionsOf.find(Path.of(words[0]), Trade.catalogue(), List.of()).orElseThrow()) {
			System.out.println("kept " + editions.keep(editions.work(), words[1], Optional.of(Shop.ODD)).id());
		} catch (NotDone refused) {
			System.out.println("refused: " + refused.getMessage());
		}
	}
}
