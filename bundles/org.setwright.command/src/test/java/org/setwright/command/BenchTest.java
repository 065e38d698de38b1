package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
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
import org.setwright.command.terminal.Keyboard;
import org.setwright.command.terminal.Surroundings;

/** The bench over lines that are piped to it, and what it writes into the book. */
class BenchTest {
	private static final Path ELM = Path.of("src/test/resources/books/elm");
	private static final String RULE = "rule \"Ours\" @authority( code or safety ) @because( \"b\" ) @source( common practice ) when Pump( ) then propose( FAN_MINUTES, \"7 min\" ); end\n";

	@TempDir
	Path folder;

	@BeforeEach
	void copyTheBook() throws IOException {
		try (Stream<Path> files = Files.walk(ELM)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				Path copy = folder.resolve(ELM.relativize(file).toString());
				Files.createDirectories(copy.getParent());
				Files.copy(file, copy);
			}
		}
	}

	@Test
	void linesArePipedToIt() {
		Typed typed = piped("pump stages: 2\n\n# a remark\npump stages + 1\n", "bench", "larch");
		assertEquals("", typed.err());
		assertTrue(typed.out().contains("say pump stages + 1\n    3\n"), typed.out());
		assertEquals(0, typed.exit());
	}

	@Test
	void theFirstLineThatCannotBeFollowedEndsIt() {
		Typed typed = piped("pump stages: 2\npump stagez: 1\nsettled\nopen\n", "bench", "larch");
		assertTrue(typed.out().endsWith("say pump stagez: 1\n         here: There is no \"stagez\" of the pump.\n    Is \"stages\" meant?\n\nThe 2 lines after it were not tried.\n"), typed.out());
		assertEquals(1, typed.exit());
	}

	@Test
	void somethingExpectedThatIsNotMetEndsWithOne() {
		assertEquals(1, piped("expect cold stop: 40 °F\n", "bench", "larch").exit());
		assertEquals(0, piped("expect cold stop: 5 °F\n", "bench", "larch").exit());
	}

	@Test
	void whatIsKeptIsInTheBookAndTheBenchGoesOnOverIt() throws IOException {
		Typed typed = piped(RULE + "keep rule in fan\nfan minutes\nrules\n", "bench", "larch");
		assertEquals(0, typed.exit(), typed.out());
		assertTrue(Files.readString(folder.resolve("rules/fan.drl")).endsWith("end\n\n" + RULE));
		assertTrue(typed.out().contains("The rule \"Ours\" is kept in rules/fan.drl.\n\nsay fan minutes\n    fan minutes: 7 min\n"), typed.out());
		assertFalse(typed.out().contains("typed here"), typed.out());
	}

	@Test
	void aJobIsKeptAsACaseOfItsOwn() throws IOException {
		Typed typed = piped("pump: { kind: from air, stages: 2 }\nexpect valve\nkeep job as Mill Pond\njob mill pond\n", "bench");
		assertEquals(0, typed.exit(), typed.out());
		assertTrue(Files.readString(folder.resolve("jobs/mill-pond.yaml")).startsWith("job: Mill Pond\npump: { kind: from air, stages: 2 }\nexpect:\n"));
		assertTrue(typed.out().contains("on the bench: Mill Pond"), typed.out());
	}

	@Test
	void aFileThatCannotBeChangedSafelyStaysAsItIs() throws IOException {
		Files.writeString(folder.resolve("rules/half.drl"), "");
		Files.writeString(folder.resolve("rules/fan.drl"), Files.readString(folder.resolve("rules/fan.drl")));
		Typed typed = piped(RULE + "keep rule in ../fan\nsettled\n", "bench", "larch");
		assertEquals(1, typed.exit());
		assertEquals(Files.readString(ELM.resolve("rules/fan.drl")), Files.readString(folder.resolve("rules/fan.drl")));
	}

	@Test
	void linesAreSavedOnceAndReplayed() throws IOException {
		Typed saved = piped("pump stages: 2\npump stages\nsave lines to tried.txt\n", "bench", "larch");
		assertEquals(0, saved.exit(), saved.out());
		assertEquals("pump stages: 2\npump stages\n", Files.readString(folder.resolve("tried.txt")));
		assertTrue(piped("replay tried.txt\nlines\n", "bench", "larch").out().endsWith("say lines\n    pump stages: 2\n    pump stages\n"));
		Typed again = piped("pump stages: 1\nsave lines to tried.txt\n", "bench", "larch");
		assertTrue(again.out().replaceAll("\\s+", " ").contains("which is left as it is. Name another."), again.out());
		assertEquals(1, again.exit());
		Files.writeString(folder.resolve("round.txt"), "replay round.txt\n");
		assertTrue(piped("replay round.txt\n", "bench").out().contains("Scripts replay one another"));
	}

	@Test
	void leavingEndsIt() {
		assertFalse(piped("leave\npump stages\n", "bench", "larch").out().contains("say pump stages"));
	}

	@Test
	void aBookWithErrorsIsNotTriedOn() throws IOException {
		Files.writeString(folder.resolve("rules/half.drl"), "rule \"half\n");
		Typed typed = piped("settled\n", "bench", "larch");
		assertEquals(1, typed.exit());
		assertTrue(typed.out().contains("half.drl"), typed.out());
	}

	private Typed piped(String lines, String... words) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		Surroundings at = new Surroundings(out, new PrintStream(err, true, StandardCharsets.UTF_8), Sample.CATALOGUE, folder, folder, folder.resolve("log"),
				"setwright", 80, false, true).with(new Keyboard(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)), false, folder.resolve("typed")));
		int exit = Main.run(at, words);
		return new Typed(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}
}
