package org.setwright.command.history;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.setwright.book.AtomicFile;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.history.HistoryImport;
import org.setwright.book.history.HistoryResult;
import org.setwright.book.history.ImportCutOff;
import org.setwright.book.history.Mapping;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Refusal;
import org.setwright.command.opening.BookOption;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes job files of a CSV file. */
@Command(name = "import", description = "Make a job file of every row of a CSV file. All of them or none: with one row that cannot be read, nothing is written.")
public final class ImportCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(index = "0", paramLabel = "CSV", description = "The file; its first row holds headings.")
	private Path csv;
	@Option(names = "--map", paramLabel = "FILE",
			description = "What the columns mean. When there is no such file, one is written from the headings, to be looked through.")
	private Path map;
	@Option(names = "--into", paramLabel = "DIR", description = "Write the job files there; into the book when left out.")
	private Path into;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public ImportCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		Path file = surroundings.folder().resolve(csv);
		try {
			if (map != null && !Files.exists(surroundings.folder().resolve(map))) {
				return drafted(file, surroundings.folder().resolve(map));
			}
			return imported(file);
		} catch (ImportCutOff e) {
			throw Refusal.couldNotRun("The import stopped in the middle (" + e.getMessage()
					+ "). Make sure that the disk can be written; the rest of its jobs is added when the book is read the next time.");
		} catch (IOException e) {
			throw Refusal.couldNotRun("The import could not be done, and nothing was written: " + file + " cannot be read, or the folder cannot be written ("
					+ e.getMessage() + ").");
		}
	}

	private int drafted(Path file, Path mapping) throws IOException {
		try (Reader reader = Files.newBufferedReader(file)) {
			AtomicFile.write(mapping, Mapping.draft(HistoryImport.headings(reader), book.catalogue()));
		}
		surroundings.err().println(surroundings.name() + ": What the columns mean was guessed from their headings and written to " + mapping
				+ ". Look through it, then type the same again. Nothing was imported.");
		return ExitCode.PROBLEMS;
	}

	private int imported(Path file) throws IOException {
		Mapping mapping = Mapping.NONE;
		if (map != null) {
			Mapping.Read read = Mapping.read(map.toString(), Files.readString(surroundings.folder().resolve(map)), book.catalogue());
			if (!read.problems().isEmpty()) {
				return delivery.deliver(new HistoryReport("import", HistoryResult.refused(read.problems()), map.toString()));
			}
			mapping = read.mapping();
		}
		Book open = into == null ? book.read() : null;
		Path jobs = into == null ? open.folder().resolve("jobs") : surroundings.folder().resolve(into);
		if (into != null && jobs.toAbsolutePath().getParent() != null) {
			book.settleImports(jobs.toAbsolutePath().getParent());
		}
		Set<String> taken = into == null ? open.jobs().stream().map(JobCase::name).collect(Collectors.toSet()) : Set.of();
		int rows;
		try (Reader reader = Files.newBufferedReader(file)) {
			rows = HistoryImport.rows(reader);
		}
		if (into == null && rows + open.jobs().size() > Book.MOST_JOBS) {
			throw Refusal.couldNotRun("A book holds at most " + Book.MOST_JOBS + " jobs, and it would come to " + (rows + open.jobs().size())
					+ ". Name another folder with --into, or split the file over several books.");
		}
		Watcher watcher = new Watcher(new ProgressLine(surroundings, "jobs read"), new ProgressLine(surroundings, "steps to put them in place"), rows);
		try (Reader reader = Files.newBufferedReader(file)) {
			HistoryResult result = new HistoryImport(csv.toString(), book.catalogue(), mapping).run(reader, jobs, taken, watcher);
			watcher.reading().finished();
			watcher.putting().finished();
			return delivery.deliver(new HistoryReport("import", result, jobs.toString()));
		}
	}

	/** Shows how far it is: reading first, then putting in place. */
	private record Watcher(ProgressLine reading, ProgressLine putting, int rows) implements HistoryResult.Watcher {
		@Override
		public boolean goOn(int jobs, int uncounted) {
			reading.done(jobs, rows);
			return !reading.cancelled();
		}

		@Override
		public void placing(int steps, int all) {
			putting.done(steps, all);
		}
	}
}
