package org.setwright.workbench.history;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.book.history.HistoryImport;
import org.setwright.book.history.HistoryResult;
import org.setwright.book.history.Mapping;
import org.setwright.book.history.Preview;
import org.setwright.book.history.UnfinishedImports;
import org.setwright.trade.catalogue.Catalogue;

/** What is to be imported, and how, as far as it has been said. Used by one thread at a time. */
final class ImportPlan {
	/** Rows read for the preview. */
	static final int PREVIEWED = 200;
	private static final int MOST_FAULTS = 1000;
	private final Book book;
	private Optional<Path> file = Optional.empty();
	private Optional<Path> elsewhere = Optional.empty();
	private Optional<Preview> preview = Optional.empty();
	private Mapping mapping = Mapping.NONE;

	/** @param book into which the jobs go, unless another folder is named */
	ImportPlan(Book book) {
		this.book = book;
	}

	/** @return every fact and setting the book may speak of */
	Catalogue catalogue() {
		return book.catalogue();
	}

	Optional<Preview> preview() {
		return preview;
	}

	Mapping mapping() {
		return mapping;
	}

	void mapping(Mapping now) {
		mapping = now;
	}

	/** Takes {@code csv} and guesses what its columns mean. @throws IOException when it cannot be read; says why in a sentence */
	void file(Path csv) throws IOException {
		preview = Optional.empty();
		try (Reader reader = Files.newBufferedReader(csv)) {
			Preview read = HistoryImport.preview(reader, PREVIEWED);
			file = Optional.of(csv);
			preview = Optional.of(read);
			mapping = Mapping.guess(read.headings(), catalogue());
		}
	}

	/** @param folder for the job files; empty for that of the book */
	void into(Optional<Path> folder) {
		elsewhere = folder;
	}

	/** @return the folder of the job files */
	Path jobs() {
		return elsewhere.orElse(book.folder().resolve("jobs")); //$NON-NLS-1$
	}

	/** @return whether the jobs go into the open book */
	boolean intoBook() {
		return elsewhere.isEmpty();
	}

	/** Reads every row and writes nothing. */
	HistoryResult check(IProgressMonitor monitor) throws IOException {
		int rows = rows();
		Optional<HistoryResult> refused = tooMany(rows);
		if (refused.isPresent()) {
			return refused.get();
		}
		monitor.beginTask(Messages.ImportPlan_checking, rows);
		try (Reader reader = Files.newBufferedReader(file.orElseThrow())) {
			return importing().check(reader, taken(), new Watched(monitor, 1));
		} finally {
			monitor.done();
		}
	}

	/** Makes the job files: all of them, or none. */
	HistoryResult run(IProgressMonitor monitor) throws IOException {
		int rows = rows();
		monitor.beginTask(Messages.ImportPlan_importing, 3 * rows);
		UnfinishedImports.settle(jobs().toAbsolutePath().getParent());
		try (Reader reader = Files.newBufferedReader(file.orElseThrow())) {
			return importing().run(reader, jobs(), taken(), new Watched(monitor, 1));
		} finally {
			monitor.done();
		}
	}

	private HistoryImport importing() {
		return new HistoryImport(file.orElseThrow().getFileName().toString(), catalogue(), mapping, MOST_FAULTS);
	}

	private int rows() throws IOException {
		try (Reader reader = Files.newBufferedReader(file.orElseThrow())) {
			return HistoryImport.rows(reader);
		}
	}

	private Set<String> taken() {
		return intoBook() ? book.jobs().stream().map(JobCase::name).collect(Collectors.toSet()) : Set.of();
	}

	private Optional<HistoryResult> tooMany(int rows) {
		int all = rows + book.jobs().size();
		return !intoBook() || all <= Book.MOST_JOBS ? Optional.empty()
				: Optional.of(HistoryResult.refused(List.of(Problem.error(Position.whole(file.orElseThrow().getFileName().toString()),
						NLS.bind(Messages.ImportPlan_tooMany, Book.MOST_JOBS, all), Messages.ImportPlan_tooManyRemedy))));
	}
}
