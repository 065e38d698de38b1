package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.bench.hand.Ground;
import org.setwright.engine.change.Watch;

/** Questions, taking back, and going through the same lines again. */
class SessionTest {
	private final Session bench = Sample.bench();

	@Test
	void aLineIsTakenBackAndDoneAgain() {
		Session two = Sample.after(bench, "pump size: 2", "speed", "lamp lit: yes");
		Session one = Sample.after(two, "undo");
		assertEquals(List.of("pump size: 2", "speed"), one.lines());
		assertEquals("taken back: pump size: 2", Sample.told(one, "undo").lines().findFirst().orElse(""));
		assertEquals("1", Sample.after(one, "undo").hand().outcome().settings().get(0).value().orElseThrow().text());
		assertTrue(Sample.told(one, "redo").startsWith("done again: lamp lit: yes\ncolour of light: red (was not needed)"));
		assertEquals("1:1 No line has been taken back that could be done again. A new line that changes something ends that.", Sample.misread(two, "redo"));
		assertEquals("1:1 There is no line to take back. Only lines that changed something can be taken back.", Sample.misread(bench, "undo"));
		assertTrue(Sample.misread(Sample.after(one, "yard gates: 1"), "redo").startsWith("1:1 No line"));
	}

	@Test
	void theScriptOfASessionGivesTheSameSession() {
		Session session = Sample.after(bench, "pump size: 2", "undo", "pump size: 3", "why speed",
				Sample.rule("X", "code or safety", "Pump( )", "propose( SPEED, 8 );"));
		Session again = bench;
		for (String line : session.script().split("\n(?!\\s)")) {
			again = Sample.after(again, line);
		}
		assertEquals(session.lines(), again.lines());
		assertEquals(session.hand().outcome().settings().toString(), again.hand().outcome().settings().toString());
	}

	@Test
	void theSameLinesGoOverAnotherEdition() {
		Session session = Sample.after(bench, "pump size: 2", "drop by size", "speed");
		String less = Sample.RULES.replaceFirst("(?s)rule \"By size\".*?end\n", "");
		Turn over = session.over(new Ground(Sample.book(less), Sample.edition(less), Optional.empty()).with("jobs/1.yaml"),
				Watch.PATIENT);
		assertEquals("This line no longer fits the book and is left out: drop by size", over.rows().get(0).words());
		assertEquals(List.of("pump size: 2", "speed"), over.session().lines());
		assertEquals("Weir 5", over.session().hand().job().name());
		assertEquals("62 °F", Sample.told(over.session(), "alarm + 0 F°"));
	}

	@Test
	void anotherJobOrNoneComesToTheBench() {
		assertEquals("on the bench: Weir 5\n  settings: 1 perhaps, 2 settled", Sample.told(bench, "job weir"));
		assertTrue(Sample.told(Sample.after(bench, "pump size: 2"),
				"job weir").endsWith("What was changed on Mill Lane 3 is put aside and not kept; undo brings it back."));
		Session none = Sample.after(bench, "no job");
		assertEquals("on the bench: no job\n  settings: 3 perhaps", Sample.told(bench, "no job"));
		assertEquals("Nothing is known of the job yet. State something, for example \"outdoor unit kind: air-source heat pump\".",
				Sample.told(none, "facts"));
		assertEquals("1:5 There is no job called \"nowhere\". Complete a part of the name to see what there is.", Sample.misread(bench, "job nowhere"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "settled | pump", "what is settled? | pump", "open | pump",
			"unknown | Nothing unknown holds a setting or a caution open.", "cautions | No caution is raised.",
			"findings | Nothing was found.", "start-up | No rule names anything to prove at start-up.",
					"expected | as expected: speed came to 1, as expected", "why speed | speed: 1",
			"why by size | \"By size\" (shop practice): spoke", "why not \"Red\" | \"Red\" (shop practice): silent",
					"why not speed: 3 | speed comes to 1 on this job",
			"what would give speed: 3 | On another job, where pump: size is 3 instead of 1, speed would come to 3.",
					"what would make red speak | On another job, where there is a lamp, and lamp: lit is yes, the rule would speak.",
			"what would change speed | if pump: size is 2 instead of 1", "what matters | if pump: size is 2 instead of 1", "facts | pump",
					"hose | hose 1", "lines | No line is in force yet.",
			"rules | spoke: \"By size\" (shop practice)", "words | State or ask for a fact" })
	void everyQuestionIsAnswered(String question, String begins) {
		String told = Sample.told(bench, question);
		assertEquals(begins, told.lines().findFirst().orElse(""), told);
	}

	@Test
	void whatIsUnknownSaysWhatItCouldChange() {
		assertEquals("pump: size\n  could change speed, alarm\n  could raise a serious caution: \"The alarm\"",
				Sample.told(Sample.after(bench, "pump size: unknown"), "unknown"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "why frob | 1:5 There is no setting called \"frob\". Complete a part of the name to see what there is.", "why | 1:4 The name of a setting is missing. Type a part of its name that no other has.",
			"why not speed: 12 | 1:16 \"12\" is out of bounds for speed. Write a whole number from 0 to 9.",
					"what would give speed | 1:22 It is not said which value of speed is meant. Write a colon and a whole number from 0 to 9.",
			"expect speed: fast | 1:15 \"fast\" is no whole number. Write a whole number from 0 to 9, or one of: gap, dispute, not needed, not set.",
			"keep | 1:5 It is not said what to keep. Write \"keep rule in FILE\", \"keep job as NAME\", \"keep job\", \"keep expectation SETTING\" or \"keep expectations\"." })
	void aQuestionThatCannotBeFollowedSaysWhere(String line, String expected) {
		assertEquals(expected, Sample.misread(bench, line));
	}

	@Test
	void linesThatSayNothingArePassedOver() {
		assertEquals(0, Sample.after(bench, "", "   ", "# a remark").lines().size());
	}
}
