package org.setwright.book.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.history.HistoryResult.Watcher;
import org.setwright.trade.Trade;

/** An import that is cut off, or whose disk fails, leaves all of its jobs or none. */
class UnfinishedImportsTest {
	private static final Watcher PATIENT = (jobs, all) -> true;
	private static final int ROWS = 9;
	@TempDir
	Path book;
	private Path jobs;

	@BeforeEach
	void aJobThatIsThere() throws IOException {
		jobs = Files.createDirectories(book.resolve("jobs"));
		Files.writeString(jobs.resolve("old.yaml"), "job: Old\n");
	}

	/** The program ends here: nothing that it would still have done is done. */
	private static final class CutOff extends Error {
	}

	/** Lets some moves pass, then fails as {@code how} says, once or for good. */
	private static Staging.Disk failing(int passes, boolean forGood, Runnable cut) {
		int[] asked = new int[1];
		return new Staging.Disk() {
			@Override
			public void move(Path from, Path to) throws IOException {
				asked[0]++;
				if (asked[0] == passes + 1 || forGood && asked[0] > passes) {
					cut.run();
					throw new IOException("the disk is full");
				}
				Files.move(from, to);
			}
		};
	}

	private static void cutOff() {
		throw new CutOff();
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, 1, 4, ROWS - 1 })
	void cutOffInTheMiddleOfMovingItIsFinishedAtTheNextStart(int moved) throws IOException {
		assertThrows(CutOff.class, () -> run(failing(moved, false, UnfinishedImportsTest::cutOff), PATIENT));
		assertEquals(1 + moved, names(jobs).size(), "it is half done");
		assertEquals(new UnfinishedImports.Found(1, 0), UnfinishedImports.settle(book));
		assertEquals(all(), names(jobs));
		assertEquals("job: Job 3\n", Files.readString(jobs.resolve("job-3.yaml")));
		assertEquals(List.of("jobs"), names(book), "nothing is left behind");
		assertTrue(UnfinishedImports.settle(book).isEmpty(), "once is enough");
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, ROWS })
	void cutOffBeforeAllIsReadItIsThrownAway(int row) throws IOException {
		assertThrows(CutOff.class, () -> run(Staging.Disk.REAL, (done, all) -> {
			if (done == row) {
				cutOff();
			}
			return true;
		}));
		assertEquals(2, names(book).size(), "something is left behind");
		assertEquals(new UnfinishedImports.Found(0, 1), UnfinishedImports.settle(book));
		assertEquals(List.of("old.yaml"), names(jobs));
		assertEquals(List.of("jobs"), names(book));
	}

	@Test
	void whatCannotBeMovedIsMovedBackAtOnce() throws IOException {
		IOException said = assertThrows(IOException.class, () -> run(failing(4, false, () -> {
		}), PATIENT));
		assertEquals("the disk is full", said.getMessage());
		assertFalse(said instanceof ImportCutOff);
		assertEquals(List.of("old.yaml"), names(jobs));
		assertEquals(List.of("jobs"), names(book));
	}

	@Test
	void whatCannotEvenBeMovedBackIsFinishedAtTheNextStart() throws IOException {
		assertThrows(ImportCutOff.class, () -> run(failing(4, true, () -> {
		}), PATIENT));
		assertEquals(5, names(jobs).size());
		assertEquals(new UnfinishedImports.Found(1, 0), UnfinishedImports.settle(book));
		assertEquals(all(), names(jobs));
	}

	@Test
	void aNameThatWasTakenMeanwhileIsNotReplaced() throws IOException {
		assertThrows(CutOff.class, () -> run(failing(2, false, UnfinishedImportsTest::cutOff), PATIENT));
		Files.writeString(jobs.resolve("job-7.yaml"), "job: Mine\n");
		UnfinishedImports.settle(book);
		assertEquals("job: Mine\n", Files.readString(jobs.resolve("job-7.yaml")));
		assertEquals("job: Job 7\n", Files.readString(jobs.resolve("job-7-2.yaml")));
	}

	@Test
	void anImportSomebodyIsStillAtIsLeftAlone() throws IOException {
		List<UnfinishedImports.Found> found = new ArrayList<>();
		run(Staging.Disk.REAL, new Watcher() {
			@Override
			public boolean goOn(int done, int all) {
				look();
				return true;
			}

			@Override
			public void placing(int steps, int all) {
				look();
			}

			private void look() {
				try {
					found.add(UnfinishedImports.settle(book));
				} catch (IOException e) {
					throw new IllegalStateException(e);
				}
			}
		});
		assertEquals(3 * ROWS, found.size());
		assertTrue(found.stream().allMatch(UnfinishedImports.Found::isEmpty));
		assertEquals(all(), names(jobs));
	}

	@ParameterizedTest
	@ValueSource(strings = { "../elsewhere", "/elsewhere", "", ".git", "a/b" })
	void aNoteThatLeadsOutOfTheBookIsNotFollowed(String note) throws IOException {
		Path left = Files.createDirectories(book.resolve(".importing-x/files")).getParent();
		Files.writeString(left.resolve("lock"), "");
		Files.writeString(left.resolve("ready"), note);
		Files.writeString(left.resolve("files/a.yaml"), "job: A\n");
		assertThrows(IOException.class, () -> UnfinishedImports.settle(book));
		assertTrue(Files.exists(left.resolve("files/a.yaml")));
		assertFalse(Files.exists(book.resolveSibling("elsewhere")));
	}

	@Test
	void aFolderThatOnlyLooksLikeOneStays() throws IOException {
		Files.writeString(Files.createDirectories(book.resolve(".importing-y")).resolve("mine.txt"), "mine");
		assertTrue(UnfinishedImports.settle(book).isEmpty());
		assertTrue(Files.exists(book.resolve(".importing-y/mine.txt")));
		assertTrue(UnfinishedImports.settle(book.resolve("none")).isEmpty());
	}

	@Test
	void progressIsToldUntilAllIsInItsPlace() throws IOException {
		List<Integer> steps = new ArrayList<>();
		run(Staging.Disk.REAL, new Watcher() {
			@Override
			public boolean goOn(int done, int all) {
				return true;
			}

			@Override
			public void placing(int done, int all) {
				assertEquals(2 * ROWS, all);
				steps.add(done);
			}
		});
		assertEquals(IntStream.rangeClosed(1, 2 * ROWS).boxed().toList(), steps);
	}

	@Test
	void aCheckFindsTheSameFaultsAndWritesNothing() throws IOException {
		String csv = "job,building floor area,Typ\nA,15,x\nB,1500 ft2,y\nold,,z\n,,\n";
		Mapping mapping = Mapping.read("m", "columns: { Typ: ignore }", Trade.catalogue()).mapping();
		HistoryResult checked = importing(mapping, Staging.Disk.REAL).check(new StringReader(csv), Set.of("Old"), PATIENT);
		assertEquals(importing(mapping, Staging.Disk.REAL).run(new StringReader(csv), jobs, Set.of("Old"), PATIENT), checked);
		assertEquals(List.of("2 building floor area", "4 ", "5 "), checked.faults().stream().map(f -> f.row() + " " + f.column()).toList());
		assertTrue(checked.faults().stream().noneMatch(f -> f.what().isBlank() || f.remedy().isBlank()));
		assertEquals(List.of("jobs"), names(book));
	}

	private void run(Staging.Disk disk, Watcher watcher) throws IOException {
		StringBuilder csv = new StringBuilder("job\n");
		IntStream.rangeClosed(1, ROWS).forEach(i -> csv.append("Job ").append(i).append('\n'));
		importing(Mapping.NONE, disk).run(new StringReader(csv.toString()), jobs, Set.of(), watcher);
	}

	private static HistoryImport importing(Mapping mapping, Staging.Disk disk) {
		return new HistoryImport("h.csv", Trade.catalogue(), mapping, HistoryResult.MOST_LISTED, disk);
	}

	private static List<String> all() {
		return Stream.concat(IntStream.rangeClosed(1, ROWS).mapToObj(i -> "job-" + i + ".yaml"), Stream.of("old.yaml")).toList();
	}

	private static List<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(f -> f.getFileName().toString()).sorted().toList();
		}
	}
}
