package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check} holds a book to the shares it demands of its own jobs, and the report shows them. */
class DemandsTest {
	private static final String RULE = """
			rule "%s"
			    @authority( shop practice )
			    @because( "Testing." )
			    @source( common practice )
			when
			    IndoorUnit( kind == %s )
			then
			    propose( HEAT_STAGES, %d );
			end
			""";

	@TempDir
	Path folder;

	@Test
	void aShareThatIsReachedPasses() throws IOException {
		Typed typed = check("rules spoken: 50 %");
		assertEquals(0, typed.exit(), typed.out());
		assertTrue(typed.out().contains("Rules spoken 50 %, at least 50 % demanded."), typed.out());
	}

	@Test
	void aShareThatIsMissedFailsAlthoughEveryJobIsAsExpected() throws IOException {
		Typed typed = check("rules spoken: 60 %");
		assertEquals(1, typed.exit());
		assertTrue(typed.out().contains("Rules spoken 50 %, at least 60 % demanded: TOO LITTLE."), typed.out());
		assertTrue(typed.out().contains("1 met, 0 not met"), typed.out());
	}

	@Test
	void mistakesAreMadeWhenTheirShareIsDemanded() throws IOException {
		assertEquals(1, check("mistakes caught: 100 %", "--html", "report.html").exit());
		String report = Files.readString(folder.resolve("report.html"));
		assertTrue(report.contains("Deliberate mistakes</h2>") && report.contains("No job lets these rules speak"), report);
		assertTrue(report.contains("mistakes caught"), report);
	}

	@Test
	void withoutADemandNoMistakesAreMade() throws IOException {
		assertEquals(0, check("rules spoken: 1 %", "--html", "report.html").exit());
		assertFalse(Files.readString(folder.resolve("report.html")).contains("Deliberate mistakes"));
	}

	@Test
	void onRequestMistakesAreMadeAndAJobIsLookedForThatWouldNoticeEach() throws IOException {
		Typed typed = check("rules spoken: 1 %", "--strength", "--html", "report.html");
		assertEquals(0, typed.exit(), "the book demands no share of mistakes");
		assertTrue(typed.out().contains("Mistakes caught "), typed.out());
		String report = Files.readString(folder.resolve("report.html"));
		assertTrue(report.contains("a job that would notice") && report.contains("would be noticed by a job like First"), report);
		assertTrue(report.contains("aria-label=\"Deliberate mistakes noticed and unnoticed, by sort of mistake\""), report);
		assertEquals(2, check("rules spoken: 1 %", "--strength", "first").exit(), "mistakes are made with all jobs or not at all");
	}

	@Test
	void someJobsAloneSayThatTheSharesAreNotLookedAt() throws IOException {
		Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(folder.resolve("jobs/b.yaml"), "job: Second\nindoor unit: { kind: furnace }\n");
		Typed typed = check("rules spoken: 100 %", "first");
		assertEquals(0, typed.exit());
		assertTrue(typed.out().contains("looked at only when all its jobs run"), typed.out());
	}

	private Typed check(String demand, String... words) throws IOException {
		Files.createDirectories(folder.resolve("rules"));
		Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(folder.resolve("book.yaml"), "book: Test\nat least: { " + demand + " }\n");
		Files.writeString(folder.resolve("rules/a.drl"), RULE.formatted("Furnace", "FURNACE", 1) + "\n" + RULE.formatted("Boiler", "BOILER", 2));
		Files.writeString(folder.resolve("jobs/a.yaml"), "job: First\nindoor unit: { kind: furnace }\nexpect: { heating stages: 1 }\n");
		String[] all = new String[words.length + 1];
		all[0] = "check";
		System.arraycopy(words, 0, all, 1, words.length);
		return Typed.in(folder).type(all);
	}
}
