package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Every fault of a job file, with its exact place and sentence. */
class JobFaultsTest {
	private static final String PATH = "jobs/a.yaml";
	private static final String COLOURS = "Write one of: red, orange, blue.";

	@Test
	void anUnknownKeyNamesTheNearestRightOne() {
		assertFaults("job: A\npmup: { }\n", "2:1: There is no \"pmup\" in a job file. Write \"pump\".");
		assertFaults("job: A\nwire: [red]\n", "2:1: There is no \"wire\" in a job file. Write \"wires\".");
		assertFaults("job: A\nWaterwheel: none\n", "2:1: There is no \"Waterwheel\" in a job file."
				+ " Write one of: job, notes, not fitted, expect, accepted, pump, lamp, wires, house, tanks.");
		assertFaults("job: A\nfloor area: 1500 ft2\n", "2:1: There is no \"floor area\" in a job file. Write it under \"house:\", indented.");
		assertFaults("job: A\npump speed: 2\n", "2:1: There is no \"pump speed\" in a job file. Settings stand under \"expect:\", indented.");
	}

	@Test
	void anUnknownFieldNamesTheNearestRightOne() {
		assertFaults("job: A\npump: { makre: Norrvik }\n", "2:9: There is no \"makre\" for the pump. Write \"maker\".");
		assertFaults("job: A\npump: { maker Norrvik }\n",
				"2:9: There is no \"maker Norrvik\" for the pump. Write a colon and a blank between \"maker\" and its value.");
		assertFaults("job: A\npump: {stages:1}\n",
				"2:8: There is no \"stages:1\" for the pump. Write a colon and a blank between \"stages\" and its value.");
		assertFaults("job: A\npump:\n  runningHeat: 4 kW\n", "3:3: There is no \"runningHeat\" for the pump. Write \"running heat\".");
		assertFaults("job: A\nlamp: { voltage: 24 V }\n", "2:9: There is no \"voltage\" for the lamp. Write one of: colour.");
		assertFaults("job: A\nlamp: { floor area: 900 ft2 }\n", "2:9: There is no \"floor area\" for the lamp. Write it under \"house:\".");
		assertFaults("job: A\nlamp:\n  pump: none\n", "3:3: There is no \"pump\" for the lamp. Write \"pump:\" without indent.");
		assertFaults("job: A\nwires:\n  - colour: red\n    guage: 18 AWG\n", "4:5: There is no \"guage\" for the wire. Write \"gauge\".");
	}

	@Test
	void anUnknownValueNamesTheNearestRightOne() {
		assertFaults("job: A\nlamp: { colour: ornage }\n", "2:17: \"ornage\" is no value of colour. Write \"orange\".");
		assertFaults("job: A\nlamp: { colour: mauve }\n", "2:17: \"mauve\" is no value of colour. " + COLOURS);
		assertFaults("job: A\npump: { kind: air driven }\n", "2:15: \"air driven\" is no value of kind. Write \"air-driven pump\".");
		assertFaults("job: A\npump: { own fuse: perhaps }\n", "2:19: \"perhaps\" is no value of own fuse. Write yes or no.");
		assertFaults("job: A\npump: { maker: " + "x".repeat(201) + " }\n",
				"2:16: Too much is written for maker. Write some words on one line, at most 200 characters.");
	}

	@Test
	void aQuantityNeedsItsUnitAndStaysInBounds() {
		String write = "Write a number with its unit (W or kW or Btu/h or kBtu/h or ton) from 1000 Btu/h to 90000 Btu/h.";
		assertFaults("job: A\npump: { running heat: 48000 }\n", "2:23: The unit of running heat is missing after 48000. " + write);
		assertFaults("job: A\npump: { running heat: 48 kBtuh }\n", "2:23: There is no unit \"kBtuh\" for running heat. " + write);
		assertFaults("job: A\npump: { running heat: 30 ft }\n",
				"2:23: The unit \"ft\" measures length, not what running heat needs. " + write);
		assertFaults("job: A\npump: { running heat: 480 kBtu/h }\n", "2:23: \"480 kBtu/h\" is out of bounds for running heat. " + write);
		assertFaults("job: A\npump: { running heat: much }\n", "2:23: \"much\" does not begin with a number. " + write);
		assertFaults("job: A\npump: { running heat: 48.5.2 kW }\n", "2:23: There is no unit \".2 kW\" for running heat. " + write);
		assertFaults("job: A\npump: { ratio: 12 }\n", "2:16: \"12\" is out of bounds for ratio. Write a number from 0 to 9.");
		assertFaults("job: A\npump: { ratio: 1 kW }\n",
				"2:16: The unit \"kW\" measures heat flow, not what ratio needs. Write a number from 0 to 9.");
	}

	@Test
	void aWholeNumberIsWholeAndInBounds() {
		assertFaults("job: A\npump: { stages: two }\n", "2:17: \"two\" is no whole number. Write a whole number from 1 to 4.");
		assertFaults("job: A\npump: { stages: 1.5 }\n", "2:17: \"1.5\" is no whole number. Write a whole number from 1 to 4.");
		assertFaults("job: A\npump: { stages: 5 }\n", "2:17: \"5\" is out of bounds for stages. Write a whole number from 1 to 4.");
		assertFaults("job: A\npump: { stages: 99999999999 }\n",
				"2:17: \"99999999999\" is out of bounds for stages. Write a whole number from 1 to 4.");
	}

	@Test
	void whatIsWorkedOutIsNeverWritten() {
		assertFaults("job: A\ntotals: { wire count: 2 }\n",
				"2:1: The totals is worked out from other answers, never written. Remove it.");
		assertFaults("job: A\nhouse: { half area: 700 ft2 }\n",
				"2:10: The house's half area is worked out (floor area halved), never written. Remove it.");
	}

	@Test
	void aListIsNotAGroupAndAGroupIsNotAList() {
		assertFaults("job: A\nwires: { colour: red }\n",
				"2:8: A job may have several wires, so a list is expected here. Begin each wire with a dash, on a line of its own.");
		assertFaults("job: A\nwires:\n  colour: red\n",
				"3:3: A job may have several wires, so a list is expected here. Begin each wire with a dash, on a line of its own.");
		assertFaults("job: A\npump:\n  - stages: 1\n",
				"3:3: A job has only one pump, and a list stands here. Write its answers under \"pump:\" without dashes.");
		assertFaults("job: A\npump: { stages: [1, 2] }\n",
				"2:17: A list or group stands where one value of stages is expected. Write a whole number from 1 to 4, or \"unknown\".");
		assertFaults("job: A\nwires:\n  - [red]\n",
				"3:5: This does not say which answer about the wire it is. Write names and values, for example \"- colour: unknown\".");
		assertFaults("job: A\ntanks:\n  - 4 ft\n",
				"3:5: This does not say which answer about the tank it is. Write names and values, for example \"- height: unknown\".");
		assertFaults("job: [A]\n",
				"1:6: A list or group stands where words are expected. Write words; put them in quotes when they hold colons, brackets or braces.");
		assertFaults("job: A\nexpect: [pump speed]\n",
				"2:9: Settings and their values are expected after \"expect:\". Write each on a line of its own, indented, as \"setting: value\".");
	}

	@Test
	void aBareWordAsksForTheNameOfTheAnswer() {
		assertFaults("job: A\npump: air-driven pump\n", "2:7: \"air-driven pump\" does not say which answer about the pump it is."
				+ " Write the name of the answer too, for example \"pump: { kind: air-driven pump }\".");
		assertFaults("job: A\ntanks: 3 ft\n", "2:8: \"3 ft\" does not say which answer about the tank it is."
				+ " Write the name of the answer too, for example \"tanks: [{ height: 3 ft }]\".");
		assertFaults("job: A\nlamp: yes\n", "2:7: \"yes\" does not say which answer about the lamp it is. Write \"fitted\".");
		assertFaults("job: A\nlamp: no\n", "2:7: \"no\" does not say which answer about the lamp it is. Write \"none\".");
		assertFaults("job: A\nwires: yes\n",
				"2:8: \"yes\" does not say which answer about the wire it is. Write each on a line of its own that begins with a dash.");
	}

	@Test
	void nothingWrittenIsNeitherNoneNorUnknown() {
		assertFaults("job: A\nlamp:\n", "2:6: Nothing is written after \"lamp:\"."
				+ " Write its answers, \"unknown\" when nobody has looked, or \"none\" when there is none.");
		assertFaults("job: A\nhouse:\n", "2:7: Nothing is written after \"house:\". Write its answers, \"unknown\" when nobody has looked.");
		assertFaults("job: A\npump: { maker: }\n",
				"2:15: Nothing is written for maker. Write \"unknown\" when nobody has looked, or remove it.");
		assertFaults("job: A\npump: { maker: null, stages: ~ }\n",
				"2:16: Nothing is written for maker. Write \"unknown\" when nobody has looked, or remove it.\n"
						+ "2:30: Nothing is written for stages. Write \"unknown\" when nobody has looked, or remove it.");
		assertFaults("job: A\nwires: []\n", "2:8: The list of wires is empty, which says neither none nor unknown."
				+ " Write \"none\", or remove the line when nobody has looked.");
	}

	@Test
	void whatEveryJobHasIsNeverNone() {
		assertFaults("job: A\nhouse: none\n", "2:8: Every job has a house, so it cannot be \"none\". Write \"unknown\", or what is known.");
		assertFaults("job: A\nnot fitted: [house]\n", "2:14: Every job has a house, so it cannot be missing. Remove it from the list.");
	}

	@Test
	void notFittedMayNotContradictWhatIsSaid() {
		assertFaults("job: A\nlamp: { colour: red }\nnot fitted: [pump, lamp]\n",
				"3:20: The lamp is said to be not fitted, but line 2 says otherwise. Remove the wrong one of the two.");
		assertFaults("job: A\nnot fitted: lamp\nlamp: unknown\n",
				"2:13: The lamp is said to be not fitted, but line 3 says otherwise. Remove the wrong one of the two.");
		assertFaults("job: A\nnot fitted: [lmap]\n", "2:14: There is no \"lmap\" that could be fitted or not. Write \"lamp\".");
		assertFaults("job: A\nnot fitted: [boiler]\n", "2:14: There is no \"boiler\" that could be fitted or not."
				+ " Write any of: pump, lamp, wires, tanks, everything else.");
		assertFaults("job: A\nnot fitted: { lamp: yes }\n", "2:13: The names of what is not fitted are expected here."
				+ " Write them between brackets, for example \"not fitted: [pump, lamp]\".");
	}

	@Test
	void sayingTwiceThatThereIsNoneIsOnlyAWarning() {
		JobText read = JobReader.read(PATH, "job: A\nlamp: none\nnot fitted: [lamp]\n", Sample.CATALOGUE);
		assertTrue(read.sound());
		assertEquals(Problem.warning(new Position(PATH, 3, 14), "That there is no lamp is already said on line 2.", "Remove one of the two."),
				read.problems().get(0));
	}

	@Test
	void nothingIsSaidTwice() {
		assertFaults("job: A\njob: B\n", "2:1: \"job\" is written twice; first on line 1. Keep the right one and remove the other.");
		assertFaults("job: A\nLamp: none\nlamp: unknown\n",
				"3:1: \"lamp\" is written twice; first on line 2. Keep the right one and remove the other.");
		assertFaults("job: A\npump: { stages: 1, Stages: 2 }\n",
				"2:20: \"Stages\" is written twice; first on line 2. Keep the right one and remove the other.");
		assertFaults("job: A\nexpect:\n  pump speed: 1\n  Pump  Speed: 2\n",
				"4:3: \"Pump  Speed\" is written twice; first on line 3. Keep the right one and remove the other.");
	}

	@Test
	void expectationsNameSettingsAndTheirValues() {
		assertFaults("job: A\nexpect: { pump sped: 2 }\n", "2:11: There is no setting \"pump sped\". Write \"pump speed\".");
		assertFaults("job: A\nexpect: { PUMP_SPEED: 2 }\n", "2:11: There is no setting \"PUMP_SPEED\". Write \"pump speed\".");
		assertFaults("job: A\nexpect: { boiler: 2 }\n",
				"2:11: There is no setting \"boiler\". Write one of: pump speed, lamp mode, alarm limit, cautions, no cautions, start-up, perhaps start-up, no start-up, findings, no findings.");
		assertFaults("job: A\nexpect: { pump speed: 7 }\n",
				"2:23: \"7\" is out of bounds for pump speed. Write a whole number from 0 to 3.");
		assertFaults("job: A\nexpect: { pump speed: unknown }\n",
				"2:23: \"unknown\" is no whole number. Write a whole number from 0 to 3.");
		assertFaults("job: A\nexpect: { lamp mode: [red] }\n",
				"2:22: One value of lamp mode is expected here. Write one of: red, orange, blue; or gap, dispute, not needed or not set.");
	}

	@Test
	void whatWasAcceptedIsAList() {
		assertFaults("job: A\naccepted: { what: a }\n", "2:11: A list of what was accepted is expected here. Begin each with a dash, on a line of its own.");
	}

	@Test
	void aJobHasAName() {
		assertFaults("lamp: none\n", "The job has no name. Add a line \"job:\" with what the shop calls it.");
		assertFaults("job:\n", "1:5: This is no name for a job. Write a name on one line after \"job:\", at most 200 characters.");
		assertFaults("", "The job file says nothing. Begin with a line \"job:\" and the name of the job.");
		assertFaults("# only a comment\n", "The job file says nothing. Begin with a line \"job:\" and the name of the job.");
		assertFaults("larch\n", "1:1: A job file consists of names and values, and this is neither. Begin with a line \"job:\", a blank and the name of the job.");
	}

	@Test
	void oneReadingFindsEveryFault() {
		assertFaults("pump: { stages: 9, makre: x }\nlamb: none\nexpect:\n  lamp mode: mauve\n",
				"The job has no name. Add a line \"job:\" with what the shop calls it.\n"
						+ "1:17: \"9\" is out of bounds for stages. Write a whole number from 1 to 4.\n"
						+ "1:20: There is no \"makre\" for the pump. Write \"maker\".\n"
						+ "2:1: There is no \"lamb\" in a job file. Write \"lamp\".\n"
						+ "4:14: \"mauve\" is no value of lamp mode. " + COLOURS);
	}

	@Test
	void aFileFullOfFaultsListsTheFirstHundred() {
		StringBuilder text = new StringBuilder("job: A\n");
		for (int i = 0; i < 250; i++) {
			text.append("nothing").append(i).append(": 1\n");
		}
		JobText read = JobReader.read(PATH, text.toString(), Sample.CATALOGUE);
		assertEquals(101, read.problems().size());
		assertEquals("150 more problems in this file are not listed.", read.problems().get(100).what());
	}

	private static void assertFaults(String text, String expected) {
		JobText read = JobReader.read(PATH, text, Sample.CATALOGUE);
		assertEquals(expected, String.join("\n",
				read.problems().stream().map(Problem::toString).map(p -> p.replace(PATH + ": ", "").replace(PATH + ":", "")).toList()));
		assertFalse(read.sound());
	}
}
