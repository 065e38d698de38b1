package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Faults in how a file is arranged, each with its place and a sentence without words of the file format. */
class YamlFaultsTest {
	private static final String PATH = "jobs/a.yaml";

	@Test
	void whatIsOpenedMustBeClosed() {
		assertFault("job: A\npump: { stages: 1\n", "2:7: The \"{\" opened here is not closed. Add \"}\" where it ends.");
		assertFault("job: A\nwires: [ # all\n", "2:8: The \"[\" opened here is not closed. Add \"]\" where it ends.");
		assertFault("job: A\nwires: [red\nlamp: none\n", "3:5: A comma or \"]\" is expected here."
				+ " Separate the entries by commas, close with \"]\", and put values that hold commas in quotes.");
		assertFault("job: \"A\npump: none\n", "1:6: The quote opened here is not closed. Add the closing quote at the end of the value.");
		assertFault("job: 'A\n", "1:6: The quote opened here is not closed. Add the closing quote at the end of the value.");
	}

	@Test
	void colonsInValuesNeedQuotes() {
		assertFault("job: Larch: upstairs\n", "1:11: A second colon stands on this line."
				+ " Put the whole value in quotes, for example notes: \"asked: fan on\".");
	}

	@Test
	void aNameIndentedTooFarBelongsNowhere() {
		assertFault("job: A\n  lamp: none\n", "2:7: This line is indented too far for a name and its value."
				+ " Give it the same indent as the names it belongs to.");
	}

	@Test
	void nothingFollowsTheEndOfAValue() {
		assertFault("job: A\nnotes: \"a\" b\n", "2:12: Something follows here after the end of a value."
				+ " Put the whole value in quotes, or begin a new line.");
		assertFault("job: A\n}\n", "2:1: A \"}\" stands here that nothing opened. Remove it, or put the whole value in quotes.");
	}

	@Test
	void oneValueStandsOnOneLine() {
		String remedy = " Write it on one line, and line up the next name or dash with those above.";
		assertFault("job: A\n  B\n", "1:6: The value of the job's name runs on to the next line." + remedy);
		assertFault("job: A\nwires:\n- red\n - blue\n", "3:3: The value of colour runs on to the next line." + remedy);
		assertFault("job: A\npump:\n  maker: a\n    b\n", "3:10: The value of maker runs on to the next line." + remedy);
		assertFault("job: A\nexpect: { pump speed: \"1\n 2\" }\n", "2:23: The value of pump speed runs on to the next line." + remedy);
	}

	@Test
	void aNameNeedsItsColon() {
		assertFault("job: A\nlamp\npump: none\n", "2:1: A name without a colon and a value."
				+ " Write a colon and a blank after the name, for example \"maker: Norrvik\".");
	}

	@Test
	void tabsDoNotIndent() {
		assertFault("job: A\npump:\n\tstages: 1\n", "3:1: A tab stands where only blanks may. Indent with blanks instead of tabs.");
	}

	@Test
	void linesMustLineUp() {
		assertFault("job: A\npump:\n    stages: 1\n  maker: x\n", "4:3: This line does not line up with the lines above it."
				+ " Give it the same indent as the entries it belongs to.");
	}

	@Test
	void somethingElseThanAValueIsRefused() {
		assertFault("job: &a A\n", "1:6: A value that begins with & names a place, which is not read here."
				+ " Remove the mark, or put the whole value in quotes.");
		assertFault("job: !x A\n", "1:6: A value that begins with ! has a special meaning, which is not read here."
				+ " Remove the mark, or put the whole value in quotes.");
		assertFault("job: A\nnotes: *a\n", "2:8: A value that begins with * refers to another place, which is not read here."
				+ " Write the value itself, or put it in quotes.");
		assertFault("job: A\n---\njob: B\n",
				"2:1: A second document begins here; a file holds one. Remove the line of dashes, or move what follows to a file of its own.");
		assertFault("job: A\n[red]: x\n", "2:1: A list or a group stands where a name is expected."
				+ " Write a name and a colon, for example \"maker: Norrvik\".");
		assertFault("job: @a\n", "1:6: A value cannot begin with \"@\". Put the whole value in quotes, for example notes: \"asked: fan on\".");
		assertFault("job: \"a\\qb\"\n",
				"1:8: A backslash between double quotes begins a code, and this is not one. Write two backslashes, or use single quotes.");
		assertFault("job: A\u0007b\n", "1:7: A character that cannot be shown stands here (code 7). Delete it and write the value anew.");
	}

	@Test
	void aTextTheParserChokesOnIsStillOnlyAFault() {
		assertFault("job: \"\\u", "1:8: The text cannot be read as names and values."
				+ " Check quotes, braces and brackets: each one opened has to be closed.");
	}

	@Test
	void nestingAndLengthAreLimited() {
		assertFault("job: " + "[".repeat(1000) + "\n",
				"1:25: Braces, brackets or indents are nested more than 20 deep. Write it flat: a job needs three levels at most.");
		assertFault("wires: [" + "red,".repeat(100_001) + "]\n", "1:399997: The file holds more than 100000 values. Split it.");
	}

	@Test
	void columnsCountCharactersAsEditorsDo() {
		assertFault("job: \uD835\uDED1 [\nlamp: { colour: mauve }\n", "2:17: \"mauve\" is no value of colour. Write one of: red, orange, blue.");
		assertFault("{ job: \uD835\uDED1, lamp: { colour: mauve } }\n", "1:28: \"mauve\" is no value of colour. Write one of: red, orange, blue.");
	}

	private static void assertFault(String text, String expected) {
		JobText read = JobReader.read(PATH, text, Sample.CATALOGUE);
		assertEquals(expected, String.join("\n",
				read.problems().stream().map(Problem::toString).map(p -> p.replace(PATH + ": ", "").replace(PATH + ":", "")).toList()));
	}
}
