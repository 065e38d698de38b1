package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.command.terminal.Surroundings;

/** The words that write: "accept", and the reports of "check". */
class AcceptTest {
	private static final Path SAMPLE = Path.of("src/test/resources/books/elm");
	@TempDir
	Path folder;
	private Typed.At at;

	@BeforeEach
	void copyTheSampleBook() throws IOException {
		try (Stream<Path> files = Files.walk(SAMPLE)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				Path copy = folder.resolve(SAMPLE.relativize(file).toString());
				Files.createDirectories(copy.getParent());
				Files.copy(file, copy);
			}
		}
		at = new Typed.At(Sample.CATALOGUE, folder, folder, 80, false, true);
	}

	@Test
	void anAcceptedOutcomeIsExpectedFromThenOnAndTheFileTellsWhy() throws IOException {
		assertEquals(1, at.type("check", "mill").exit());
		Typed accepted = at.type("accept", "mill", "--by", "Dana Reyes", "--because", "The new sheet says: cooling.");
		assertEquals(0, accepted.exit(), accepted.err());
		assertTrue(accepted.out().contains("valve: powered in heating before, powered in cooling from now on"), accepted.out());
		String text = Files.readString(folder.resolve("jobs/mill-road-2.yaml"));
		assertTrue(text.contains("  valve: powered in cooling\n"), text);
		assertTrue(text.contains("    by: Dana Reyes\n    because: 'The new sheet says: cooling.'\n"), text);
		assertEquals(0, at.type("check", "mill").exit());
		assertTrue(at.type("accept", "mill", "--by", "D", "--because", "B").out().contains("nothing was changed"));
		assertEquals(text, Files.readString(folder.resolve("jobs/mill-road-2.yaml")));
	}

	@Test
	void oneSettingMayBeAcceptedAlsoWhenNothingWasExpectedOfIt() throws IOException {
		assertTrue(at.type("accept", "new", "valve", "--by", "D", "--because", "B", "--as", "csv").out().contains(",valve,not asked,"));
		assertTrue(Files.readString(folder.resolve("jobs/new-customer.yaml")).contains("expect:\n  valve: "));
	}

	@Test
	void withoutANameOrAReasonNothingIsAccepted() throws IOException {
		String before = Files.readString(folder.resolve("jobs/mill-road-2.yaml"));
		assertEquals(2, at.type("accept", "mill", "--by", "D").exit());
		assertEquals(2, at.type("accept", "mill", "--by", " ", "--because", "B").exit());
		assertEquals(before, Files.readString(folder.resolve("jobs/mill-road-2.yaml")));
	}

	@Test
	void reportsAreWrittenWhereTold() throws IOException {
		assertEquals(1, at.type("check", "--junit", "out/a/junit.xml", "--html", "out/report.html").exit());
		String junit = Files.readString(folder.resolve("out/a/junit.xml"));
		assertTrue(junit.matches("(?s).*<testcase name=\"valve\" classname=\"Elm Street Heating.mill-road-2\" time=\"\\d+\\.\\d{6}\"><failure.*"), junit);
		assertTrue(Files.readString(folder.resolve("out/report.html")).startsWith("<!DOCTYPE html>"));
		Typed refused = at.type("check", "--html", "book.yaml/x.html");
		assertEquals(3, refused.exit());
		assertTrue(refused.err().contains("cannot be written"), refused.err());
	}

	@Test
	void progressIsShownOnlyWhereSomebodyWatches() {
		assertTrue(errorsOf(true).contains("3 of 3 jobs"));
		assertFalse(errorsOf(false).contains("jobs"));
	}

	private String errorsOf(boolean watched) {
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		PrintStream printed = new PrintStream(err, true, StandardCharsets.UTF_8);
		Main.run(new Surroundings(new ByteArrayOutputStream(), printed, Sample.CATALOGUE, folder, folder, folder.resolve("log"), "setwright", 80, false,
				true, watched), "check");
		return err.toString(StandardCharsets.UTF_8);
	}
}
