package org.setwright.command.opening;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.history.UnfinishedImports;
import org.setwright.command.answer.Refusal;
import org.setwright.command.terminal.Surroundings;
import org.setwright.trade.catalogue.Catalogue;
import picocli.CommandLine.Option;

/** Which rule book is meant; a mixin of every word that needs one. */
public final class BookOption {
	private static final String MARK = "book.yaml";
	private final Surroundings surroundings;

	@Option(names = "--book", paramLabel = "DIR",
			description = "The folder of the rule book; else the current folder if it holds book.yaml, else the starter book.")
	private Path stated;

	/** @param surroundings where to look */
	public BookOption(Surroundings surroundings) {
		this.surroundings = surroundings;
	}

	/** @return the book as read */
	public Book read() {
		Path folder = folder();
		settleImports(folder);
		return BookReader.read(folder, surroundings.catalogue());
	}

	/** @return every fact and setting the book may speak of; those of the trade when there is no book */
	public Catalogue catalogue() {
		return BookReader.catalogue(stated == null ? usual() : folder(), surroundings.catalogue());
	}

	/** Half of an import that was cut off would count as the jobs of the book. @param folder in which job folders stand */
	public void settleImports(Path folder) {
		try {
			UnfinishedImports.Found found = UnfinishedImports.settle(folder);
			if (found.finished() > 0) {
				surroundings.err().println(surroundings.name() + ": An import that was cut off has been finished: all of its jobs are there now.");
			}
		} catch (IOException stuck) {
			surroundings.err().println(surroundings.name() + ": An import into " + folder + " was cut off and cannot be finished, so some of its jobs are missing ("
					+ stuck.getMessage() + "). Check the disk, and who may write that folder; then say the same again.");
		}
	}

	/** @return the book, read and compiled */
	public OpenBook open() {
		HeadStart.begin();
		Book book = read();
		return OpenBook.of(book, !book.folder().equals(usual()));
	}

	/** @return its folder; it need not be a book yet */
	public Path folder() {
		if (stated != null) {
			Path folder = surroundings.folder().resolve(stated).normalize();
			if (!Files.isDirectory(folder)) {
				throw Refusal.couldNotRun("There is no folder " + folder + "; name the folder that holds " + MARK + ".");
			}
			return folder;
		}
		Path folder = usual();
		if (!Files.isDirectory(folder)) {
			throw Refusal.couldNotRun("There is no rule book here; name the folder that holds " + MARK + " with --book.");
		}
		return folder;
	}

	private Path usual() {
		return Files.isRegularFile(surroundings.folder().resolve(MARK)) ? surroundings.folder() : surroundings.starter();
	}
}
