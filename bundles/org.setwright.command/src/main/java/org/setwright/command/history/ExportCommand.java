package org.setwright.command.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.setwright.book.history.HistoryExport;
import org.setwright.book.history.HistoryResult;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.opening.BookOption;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes job files as one CSV file. */
@Command(name = "export", description = "Write every job as a row of one CSV file, with headings that \"import\" understands. What was accepted is left out.")
public final class ExportCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(index = "0", paramLabel = "CSV", description = "The file to write; replaced when it is there.")
	private Path csv;
	@Option(names = "--from", paramLabel = "DIR", description = "A folder of job files; those of the book when left out.")
	private Path from;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public ExportCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		Path jobs = from == null ? book.folder().resolve("jobs") : surroundings.folder().resolve(from);
		if (!Files.isDirectory(jobs)) {
			throw Refusal.couldNotRun("There is no folder " + jobs + "; name one that holds job files.");
		}
		book.settleImports(jobs.toAbsolutePath().getParent());
		ProgressLine progress = new ProgressLine(surroundings, "jobs");
		try {
			HistoryResult result = new HistoryExport(book.catalogue()).run(jobs, surroundings.folder().resolve(csv), (done, all) -> {
				progress.done(done, all);
				return !progress.cancelled();
			});
			progress.finished();
			return delivery.deliver(new HistoryReport("export", result, csv.toString()));
		} catch (IOException e) {
			throw Refusal.couldNotRun("The export could not be done, and nothing was written (" + e.getMessage() + ").");
		}
	}
}
