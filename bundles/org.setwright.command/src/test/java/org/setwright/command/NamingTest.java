package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How the book, a job and a setting may be named. */
class NamingTest {
	@TempDir
	Path folder;

	@ParameterizedTest
	@ValueSource(strings = { "Larch Lane 14, upstairs", "larch lane 14, UPSTAIRS", "jobs/larch-lane-14.yaml", "larch-lane-14", "upstairs" })
	void aJobByNameFileOrPart(String name) {
		assertTrue(Typed.inSampleBook("elm").type("setup", name).out().startsWith("Larch Lane 14, upstairs\n"));
	}

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource(delimiter = '|', textBlock = """
			setup larsh-lane-14      | Is "larch-lane-14" meant?
			setup nowhere            | There are: "Larch Lane 14, upstairs", "Mill Road 2", "New customer".
			setup r                  | More than one job is meant by "r"
			why larch speed          | There are: "valve", "spare stages"
			why larch fan            | More than one setting is meant by "fan": "fan minutes", "fan by heater". Write more of it.
			""")
	void anythingElseIsRefusedWithWhatThereIs(String words, String sentence) {
		Typed typed = Typed.inSampleBook("elm").type(words.split(" "));
		assertEquals(2, typed.exit());
		assertTrue(typed.err().contains(sentence), typed.err());
	}

	@Test
	void theCurrentFolderIsTheBookWhenItHoldsOneElseTheStarterBook() throws IOException {
		Path starter = Files.createDirectories(folder.resolve("starter"));
		Files.writeString(starter.resolve("book.yaml"), "book: The starter\nformat: 1\n");
		Typed.At at = new Typed.At(Sample.CATALOGUE, folder, starter, 80, false, true);
		assertTrue(at.type("jobs").out().startsWith("The starter: "));
		Files.writeString(folder.resolve("book.yaml"), "book: The one here\nformat: 1\n");
		assertTrue(at.type("jobs").out().startsWith("The one here: "));
		assertTrue(at.type("jobs", "--book", "starter").out().startsWith("The starter: "));
	}
}
