package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every word of the program knows the settings a book adds. */
class OwnSettingsTest {
	private static final String SETTINGS = "settings:\n  - setting: pump exercise\n    meaning: Turns the pump.\n    values: [off, daily]\n    needed: OutdoorUnit( )\n";
	private static final String RULE = "rule \"Turn it\"\n@authority( shop practice )\n@because( \"It seizes.\" )\n@source( common practice )\nwhen\n"
			+ "    OutdoorUnit( stages == 2 )\nthen\n    propose( PUMP_EXERCISE, DAILY );\nend\n";
	@TempDir
	Path folder;

	@BeforeEach
	void write() throws IOException {
		write("book.yaml", "book: Ours\nformat: 1\n");
		write("settings.yaml", SETTINGS);
		write("rules/a.drl", RULE);
		write("jobs/one.yaml", "job: One\noutdoor unit: { stages: 2 }\nexpect:\n  pump exercise: { is: daily, by: Turn it }\n");
		write("jobs/two.yaml", "job: Two\noutdoor unit: { stages: 1 }\nexpect:\n  pump exercise: gap\n");
	}

	private void write(String path, String text) throws IOException {
		Files.createDirectories(folder.resolve(path).getParent());
		Files.writeString(folder.resolve(path), text);
	}

	private String out(String... words) {
		Typed typed = Typed.in(folder).type(words);
		assertEquals(0, typed.exit(), typed.out() + typed.err());
		return typed.out();
	}

	@Test
	void checkHoldsTheJobsAgainstThem() throws IOException {
		out("check");
		write("jobs/two.yaml", "job: Two\noutdoor unit: { stages: 1 }\nexpect:\n  pump exercise: off\n");
		assertEquals(1, Typed.in(folder).type("check").exit());
	}

	@Test
	void setupWhyAndInsteadTellOfThem() {
		assertTrue(out("setup", "one").contains("pump exercise"), out("setup", "one"));
		assertTrue(out("why", "one", "pump exercise").contains("It seizes."));
		assertTrue(out("instead", "two", "pump exercise", "daily").contains("stages"), out("instead", "two", "pump exercise", "daily"));
	}

	@Test
	void wordsExplainsThemAndPrintsASchemaThatKnowsThem() {
		String words = out("words", "pump exercise");
		assertTrue(words.contains("Turns the pump.") && words.contains("PUMP_EXERCISE") && words.contains("daily (DAILY)\n"), words);
		assertTrue(out("words", "--schema").contains("\"pump exercise\""));
	}

	@Test
	void jobsGoOutAndComeInWithThem() throws IOException {
		out("export", "all.csv");
		assertTrue(Files.readString(folder.resolve("all.csv")).contains("expect pump exercise"));
		out("import", "all.csv", "--into", "again");
		try (var jobs = Files.list(folder.resolve("again"))) {
			assertTrue(jobs.anyMatch(j -> read(j).contains("pump exercise: { is: daily, by: Turn it }")));
		}
	}

	private static String read(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}

	@Test
	void theBenchKnowsThem() throws IOException {
		write("lines.txt", "outdoor unit stages: 1\nwhat is pump exercise\nundo\nwhy pump exercise\n");
		String said = out("bench", "one", "--script", "lines.txt");
		assertTrue(said.contains("pump exercise") && said.contains("It seizes."), said);
	}

	@Test
	void mistakesInTheirFileAreToldWithLineAndRemedy() throws IOException {
		write("settings.yaml", SETTINGS.replace("values: [off, daily]", "values: [off, gap]").replace("OutdoorUnit( )", "OutdorUnit( )"));
		Typed typed = Typed.in(folder).type("check");
		assertEquals(1, typed.exit());
		assertTrue(typed.out().contains("settings.yaml:4:19"), typed.out());
	}
}
