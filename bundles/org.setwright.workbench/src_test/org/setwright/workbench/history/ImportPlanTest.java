package org.setwright.workbench.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Book;
import org.setwright.book.history.HistoryResult;
import org.setwright.book.history.Mapping;
import org.setwright.trade.Trade;

class ImportPlanTest {
	private static final int ROWS = 30;
	@TempDir
	Path folder;
	private ImportPlan plan;

	@BeforeEach
	void aFileOfManyRows() throws IOException {
		StringBuilder csv = new StringBuilder("Customer,outdoor unit stages\n");
		IntStream.range(0, ROWS).forEach(i -> csv.append("Job ").append(i).append(",1\n"));
		Files.writeString(folder.resolve("list.csv"), csv);
		Files.createDirectories(folder.resolve("book/jobs"));
		plan = new ImportPlan(Book.empty(folder.resolve("book"), Trade.catalogue()));
		plan.file(folder.resolve("list.csv"));
		plan.mapping(plan.mapping().with("Customer", new Mapping.Column("job")));
	}

	/** A progress bar on which somebody presses Cancel after some ticks. */
	private static final class Bar extends NullProgressMonitor {
		private final int patience;
		private int total;
		private int worked;

		Bar(int patience) {
			this.patience = patience;
		}

		@Override
		public void beginTask(String name, int ticks) {
			total = ticks;
		}

		@Override
		public void worked(int ticks) {
			worked += ticks;
			setCanceled(worked >= patience);
		}
	}

	@Test
	void theBarFillsWhileRowsAreCheckedAndWhileTheyAreImported() throws IOException {
		Bar checking = new Bar(Integer.MAX_VALUE);
		assertEquals(new HistoryResult(ROWS, List.of(), 0, false), plan.check(checking));
		assertEquals(List.of(ROWS, ROWS), List.of(checking.total, checking.worked));
		assertEquals(0, files(folder.resolve("book/jobs")));
		Bar importing = new Bar(Integer.MAX_VALUE);
		assertEquals(ROWS, plan.run(importing).jobs());
		assertEquals(importing.total, importing.worked);
		assertEquals(ROWS, files(folder.resolve("book/jobs")));
	}

	@Test
	void whoeverCancelsImportsNothing() throws IOException {
		HistoryResult checked = plan.check(new Bar(7));
		assertTrue(checked.cancelled());
		assertEquals(7, checked.jobs());
		assertTrue(plan.run(new Bar(ROWS - 1)).cancelled());
		assertEquals(0, files(folder.resolve("book/jobs")));
		assertEquals(1, files(folder.resolve("book")), "nothing is left behind");
	}

	@Test
	void onceAllIsReadItIsTooLateToCancel() throws IOException {
		assertFalse(plan.run(new Bar(ROWS + 3)).cancelled());
		assertEquals(ROWS, files(folder.resolve("book/jobs")));
	}

	@Test
	void anotherFolderIsTakenInsteadOfTheBook() throws IOException {
		plan.into(Optional.of(folder.resolve("elsewhere/jobs")));
		assertFalse(plan.intoBook());
		assertEquals(ROWS, plan.run(new NullProgressMonitor()).jobs());
		assertEquals(ROWS, files(folder.resolve("elsewhere/jobs")));
		assertEquals(0, files(folder.resolve("book/jobs")));
	}

	@Test
	void whatIsWrongWithAMappingIsSaid() throws IOException {
		List<String> headings = plan.preview().orElseThrow().headings();
		assertEquals(Optional.empty(), Columns.wrong(headings, plan.mapping(), plan.catalogue()));
		assertTrue(Columns.wrong(headings, plan.mapping().with("Customer", new Mapping.Column("ignore")), plan.catalogue()).orElseThrow().contains("No column names the jobs"));
		assertTrue(Columns.wrong(headings, plan.mapping().with("Customer", new Mapping.Column("outdoor unit stages")), plan.catalogue()).orElseThrow().contains("Two columns"));
		assertTrue(Columns.wrong(headings, plan.mapping().with("Customer", new Mapping.Column("outdoor unit makr")), plan.catalogue()).orElseThrow().contains("outdoor unit maker"));
		assertThrows(IOException.class, () -> plan.file(folder.resolve("none.csv")));
	}

	private static long files(Path in) throws IOException {
		try (Stream<Path> all = Files.list(in)) {
			return all.count();
		}
	}
}
