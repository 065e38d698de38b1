package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The words "import" and "export". */
class HistoryTest {
	@TempDir
	Path folder;
	private Typed.At at;

	@BeforeEach
	void anEmptyBook() throws IOException {
		Files.writeString(folder.resolve("book.yaml"), "book: The one here\nformat: 1\n");
		at = new Typed.At(Sample.CATALOGUE, folder, folder, 80, false, true);
	}

	@Test
	void aMappingIsDraftedLookedThroughAndUsed() throws IOException {
		Files.writeString(folder.resolve("list.csv"), "Customer,pump makr,Bill\nLarch Lane,Norrvik,7\nMill Road,,8\n");
		Typed drafted = at.type("import", "list.csv", "--map", "map.yaml");
		assertEquals(1, drafted.exit());
		assertTrue(drafted.err().contains("Nothing was imported"), drafted.err());
		assertTrue(Files.readString(folder.resolve("map.yaml")).endsWith("  Customer: ignore\n  pump makr: pump maker\n  Bill: ignore\n"));
		assertFalse(Files.exists(folder.resolve("jobs")));
		Files.writeString(folder.resolve("map.yaml"), Files.readString(folder.resolve("map.yaml")).replace("Customer: ignore", "Customer: job"));
		Typed imported = at.type("import", "list.csv", "--map", "map.yaml");
		assertEquals(0, imported.exit(), imported.out() + imported.err());
		assertTrue(imported.out().contains("2 jobs written to"), imported.out());
		assertEquals("job: Larch Lane\npump: { maker: Norrvik }\n", Files.readString(folder.resolve("jobs/larch-lane.yaml")));
		assertEquals(1, at.type("import", "list.csv", "--map", "map.yaml").exit(), "the jobs are there already");
	}

	@Test
	void whatIsExportedIsImportedAgain() throws IOException {
		Typed.At elm = new Typed.At(Sample.CATALOGUE, Path.of("src/test/resources/books/elm"), folder, 80, false, true);
		assertEquals(0, elm.type("export", folder.resolve("all.csv").toAbsolutePath().toString()).exit());
		assertEquals(0, at.type("import", "all.csv").exit());
		assertTrue(at.type("jobs").out().contains("Larch Lane 14, upstairs"));
		assertTrue(Files.readString(folder.resolve("jobs/mill-road-2.yaml")).contains("  cautions:\n    - stop\n"));
	}

	@Test
	void faultsAreListedAndNothingIsWritten() throws IOException {
		Files.writeString(folder.resolve("list.csv"), "job,pump stages\nA,9\n");
		Typed typed = at.type("import", "list.csv");
		assertEquals(1, typed.exit());
		assertTrue(typed.out().contains("error in list.csv:2") && typed.out().contains("1 problem. Nothing was written."), typed.out());
		assertTrue(at.type("import", "list.csv", "--as", "json").out().contains("\"jobs\" : 0"));
		assertFalse(Files.exists(folder.resolve("jobs")));
		assertEquals(3, at.type("import", "nothing.csv").exit());
		assertEquals(3, at.type("export", "all.csv").exit(), "there are no jobs to export");
	}

	@Test
	void aBookTakesNoMoreJobsThanItHolds() throws IOException {
		StringBuilder csv = new StringBuilder("job\n");
		for (int i = 0; i <= 10_000; i++) {
			csv.append("Job ").append(i).append('\n');
		}
		Files.writeString(folder.resolve("list.csv"), csv);
		Typed typed = at.type("import", "list.csv");
		assertEquals(3, typed.exit());
		assertTrue(typed.err().contains("--into"), typed.err());
	}

	@Test
	void anImportThatWasCutOffIsFinishedBeforeTheBookIsRead() throws IOException {
		Path left = Files.createDirectories(folder.resolve(".importing-1/files")).getParent();
		Files.writeString(left.resolve("lock"), "");
		Files.writeString(left.resolve("ready"), "jobs");
		Files.writeString(left.resolve("files/a.yaml"), "job: Alder Close\n");
		Typed typed = at.type("jobs");
		assertTrue(typed.out().contains("Alder Close"), typed.out());
		assertTrue(typed.err().contains("all of its jobs are there now"), typed.err());
		assertFalse(Files.exists(left));
		assertEquals("", at.type("jobs").err(), "said once");
	}

	@Test
	void anImportThatCannotBeFinishedIsSaid() throws IOException {
		Path left = Files.createDirectories(folder.resolve(".importing-1/files")).getParent();
		Files.writeString(left.resolve("lock"), "");
		Files.writeString(left.resolve("ready"), "../jobs");
		assertTrue(at.type("jobs").err().contains("cannot be finished"));
	}
}
