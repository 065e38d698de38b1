package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;

/** Expectations beyond a plain value: how far off, by which rule, not set; which cautions, start-up checks and findings; and what was accepted. */
class ExpectingMoreTest {
	private static final String PATH = "jobs/a.yaml";
	private static final String FULL = """
			job: A
			expect:
			  pump speed: { is: 2 within 1, by: "Slow: at night" }   # agreed
			  lamp mode: not set
			  alarm limit: 62 °F within 2 F°
			  cautions:
			    - stop: line voltage
			    # asked for twice
			    - note
			  no cautions: danger
			accepted:
			  - what: alarm limit
			    was: 60 °F
			    now: 62 °F within 2 F°
			    date: 2026-11-25
			    by: Dana Reyes
			    because: The tank was moved.
			""";
	private static final Acceptance SECOND = new Acceptance("pump speed", "2", "3", LocalDate.of(2026, 11, 26), "Lee", "It starts: harder now.");

	@Test
	void readsThemAll() {
		JobText read = read(FULL);
		assertEquals(List.of(), read.problems());
		assertEquals(List.of("2 within 1, by Slow: at night", "not set", "62 °F within 2 F°"),
				read.job().expected().values().stream().map(JobCase.Expectation::text).toList());
		assertEquals(List.of("true stop: line voltage", "true note", "false danger"),
				read.job().cautions().stream().map(c -> c.appears() + " " + c.text()).toList());
		assertEquals(new Position(PATH, 7, 7), read.job().cautions().get(0).at());
		assertEquals(List.of(new Acceptance("alarm limit", "60 °F", "62 °F within 2 F°", LocalDate.of(2026, 11, 25), "Dana Reyes", "The tank was moved.")),
				read.job().accepted());
		assertEquals(6, read.job().expectations());
	}

	@Test
	void everyOtherCautionMayBeRuledOutButNotDemanded() throws JobNotWritten {
		JobText read = read("job: A\nexpect:\n  cautions: note\n  no cautions: any other\n");
		assertEquals(List.of(), read.problems());
		assertEquals(List.of(false, true), read.job().cautions().stream().map(ExpectedCaution::other).toList());
		assertEquals(read.job().cautions().get(1).text(), read(new JobWriter(Sample.CATALOGUE).write(read.job())).job().cautions().get(1).text());
		assertEquals(1, read("job: A\nexpect:\n  cautions: any other\n").problems().size());
	}

	@Test
	void startUpChecksAndFindingsAreListedToo() throws JobNotWritten {
		JobText read = read("""
				job: A
				expect:
				  Start-up:
				    - cooling: the air   gets COLD
				    - Heating
				    - by: "Start-up: no smell of gas"
				    - any: light
				  perhaps start-up: fan
				  no start-up: [safety devices, any other]
				  findings: [DUAL_FUEL_JOB, two transformers]
				  no findings: any other
				""");
		assertEquals(List.of(), read.problems());
		assertEquals(List.of("START_UP cooling: the air gets COLD", "START_UP heating", "START_UP by: Start-up: no smell of gas", "START_UP any: light",
				"PERHAPS_START_UP fan", "NO_START_UP safety devices", "NO_START_UP any other", "FINDINGS dual fuel job", "FINDINGS two transformers",
				"NO_FINDINGS any other"), read.job().items().stream().map(i -> i.list() + " " + i.text()).toList());
		assertEquals(new Position(PATH, 4, 7), read.job().items().get(0).at());
		assertEquals(read.job().items().stream().map(ExpectedItem::text).toList(),
				read(new JobWriter(Sample.CATALOGUE).write(read.job())).job().items().stream().map(ExpectedItem::text).toList());
	}

	@ParameterizedTest(name = "{0} means a check of cooling that says ''It gets cold.'': {1}")
	@CsvSource(delimiter = '|', textBlock = """
			cooling              | yes
			heating              | no
			any                  | yes
			cooling: GETS  cold  | yes
			any: gets cold       | yes
			cooling: gets warm   | no
			heating: gets cold   | no
			by: 'Start-up: cold' | yes
			by: 'start'          | no
			""")
	void aCheckIsNamedByItsPartItsWordsOrItsRule(String written, String means) {
		ExpectedCheck check = (ExpectedCheck) read("job: A\nexpect:\n  start-up:\n    - " + written + "\n").job().items().get(0);
		assertEquals(means.equals("yes"), check.means(StartUpPhase.COOLING, () -> List.of("wait.", ExpectedCheck.plain("It gets\n cold.")), List.of("Start-up: cold", "Other")));
	}

	@ParameterizedTest
	@CsvSource({ "62 °F ± 2 F°", "62 °F +/- 2 F", "62 F Within 2 F°", "62°F±2°F", "62 °F +- 2 F°" })
	void howFarOffMayBeWrittenInSeveralWays(String written) {
		assertEquals("62 °F within 2 F°", read("job: A\nexpect:\n  alarm limit: " + written + "\n").job().expected().values().iterator().next().text());
	}

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource(delimiter = '|', textBlock = """
			alarm limit: 62 °F within 0 F° | 2:24: "0 F°" does not say how far alarm limit may be off. Write a number above 0 with its unit (C° or F°) after "within".
			alarm limit: 62 °F within 2 ft | 2:24: "2 ft" does not say how far alarm limit may be off. Write a number above 0 with its unit (C° or F°) after "within".
			alarm limit: 99 °F within 2 F° | 2:24: There is no unit "°F within 2 F°" for alarm limit. Write a number with its unit (K or °C or °F) from 30 °F to 90 °F.
			lamp mode: red within 1        | 2:22: "red within 1" is no value of lamp mode. Write one of: red, orange, blue.
			lamp mode: { is: red }         | 2:22: The rule that has to decide lamp mode is missing. Add "by: <name of the rule>", or write the value alone without braces.
			lamp mode: { is: gap, by: x }  | 2:28: "gap" is no value of lamp mode. Write one of: red, orange, blue.
			lamp mode: { si: red, by: x }  | 2:24: "si" says nothing about lamp mode. Write "{ is: <value>, by: <name of the rule> }".
			cautions: [stopp]              | 2:22: There is no kind of caution "stopp". Write "stop".
			cautions: [stop, STOP]         | 2:28: This caution is written twice. Remove one of the two.
			no cautions: [{ a: b, c: d }]  | 2:25: The kind of a caution, and a part of its sentence, are expected here. Write each in a line of its own, after a dash, as "stop: a part of the sentence", or just "stop".
			cautoins: stop                 | 2:11: There is no setting "cautoins". Write "cautions".
			start-up: [coolng]             | 2:22: There is no part of a start-up "coolng". Write "cooling".
			start-up: { heatin: light }    | 2:23: There is no part of a start-up "heatin". Write "heating".
			start-up: by                   | 2:21: The name of the rule that asks for the check is missing. Write "by: <name of the rule>".
			start-up: any other            | 2:21: There is no part of a start-up "any other". Write one of: before power, power on, control voltage, fan, cooling, heating, second stage and auxiliary heat, emergency heat, changeover and balance, humidity and ventilation, safety devices, hand-over, any, by.
			no start-up: [fan, Fan]        | 2:30: This check is written twice. Remove one of the two.
			start-up: [[fan]]              | 2:22: A part of the start-up, and words of the check, are expected here. Write each in a line of its own, after a dash, as "heating: a few words of the check", or just "heating".
			findings: ["dual, fuel"]       | 2:22: "dual, fuel" is no name of a finding. Write the name as in the rule that finds it, or in small letters.
			findings: [{ a: b }]           | 2:22: The name of a finding is expected here. Write each in a line of its own, after a dash.
			findings: [A_B, a b]           | 2:27: This finding is written twice. Remove one of the two.
			""")
	void faultsAreNamed(String expectation, String fault) {
		assertEquals(fault, faults("job: A\nexpect: { " + expectation + " }\n"));
	}

	@ParameterizedTest(name = "{0}")
	@CsvSource(delimiter = '|', textBlock = """
			{ what: a, was: b, now: c, by: d, because: e }                   | 2:12: What was accepted lacks "date".
			{ what: a, was: b, now: c, date: May 1, by: d, because: e }      | 2:12: "May 1" is no day. Write it as year-month-day, for example 2026-11-25.
			{ what: a, was: b, now: c, date: 2026-01-01, by: d, becuase: e } | 2:64: "becuase" does not belong to what was accepted. Write "because".
			yes                                                              | 2:12: What was accepted is told by names and values, and this is neither.
			""")
	void anAcceptanceSaysWhoWhenAndWhy(String written, String fault) {
		assertEquals(fault, faults("job: A\naccepted: [" + written + "]\n").lines().findFirst().orElseThrow().substring(0, fault.length()));
	}

	@Test
	void editsChangeOneLineAndKeepComments() throws JobNotWritten {
		Setting speed = Sample.CATALOGUE.setting("PUMP_SPEED").orElseThrow();
		assertEdit(new JobEdit.Expected(speed, ExpectationText.read(speed, "3", Position.whole(PATH)).orElseThrow()),
				"{ is: 2 within 1, by: \"Slow: at night\" }   #", "3   #");
		Setting lamp = Sample.CATALOGUE.setting("LAMP_MODE").orElseThrow();
		assertEdit(new JobEdit.Expected(lamp, new JobCase.DecidedBy(Optional.empty(), "table lamps", Position.whole(PATH))), "mode: not set", "mode: { by: table lamps }");
		assertEdit(new JobEdit.ItemExpected(caution(true, "Mind, please")), "    - note\n", "    - note\n    - danger: Mind, please\n");
		assertEdit(new JobEdit.ItemExpected(caution(false, "Mind, please")), "no cautions: danger", "no cautions: [danger, { danger: 'Mind, please' }]");
		assertEdit(new JobEdit.ItemNotExpected(caution(false, "")), "  no cautions: danger\n", "");
		assertEdit(new JobEdit.ItemExpected(ExpectedCheck.by(ItemList.PERHAPS_START_UP, "Start-up: cold", Position.whole(PATH))), "no cautions: danger\n",
				"no cautions: danger\n  perhaps start-up:\n    - by: 'Start-up: cold'\n");
		assertEdit(new JobEdit.ItemExpected(new ExpectedFinding(false, "DUAL_FUEL_JOB", false, Position.whole(PATH))), "no cautions: danger\n",
				"no cautions: danger\n  no findings:\n    - dual fuel job\n");
		assertEdit(new JobEdit.Accepted(SECOND), "tank was moved.\n",
				"tank was moved.\n  - what: pump speed\n    was: 2\n    now: 3\n    date: 2026-11-26\n    by: Lee\n    because: 'It starts: harder now.'\n");
	}

	@Test
	void aFirstOneBeginsItsList() throws JobNotWritten {
		JobWriter writer = new JobWriter(Sample.CATALOGUE);
		String noted = writer.editAll(PATH, "job: A\nlamp: none # sure\n", List.of(new JobEdit.ItemExpected(caution(true, "Mind")), new JobEdit.Accepted(SECOND)));
		assertEquals("job: A\nlamp: none # sure\nexpect:\n  cautions:\n    - danger: Mind\naccepted:\n  - what: pump speed\n    was: 2\n"
				+ "    now: 3\n    date: 2026-11-26\n    by: Lee\n    because: 'It starts: harder now.'\n", noted);
		assertEquals("job: A\nlamp: none # sure\n", writer.edit(PATH, "job: A\nlamp: none # sure\nexpect: { cautions: danger }\n",
				new JobEdit.ItemNotExpected(caution(true, ""))));
	}

	private static ExpectedCaution caution(boolean appears, String words) {
		return new ExpectedCaution(appears, Optional.of(CautionKind.DANGER), words, Position.whole(PATH));
	}

	private static void assertEdit(JobEdit edit, String before, String after) throws JobNotWritten {
		assertEquals(FULL.replace(before, after), new JobWriter(Sample.CATALOGUE).edit(PATH, FULL, edit));
	}

	private static JobText read(String text) {
		return JobReader.read(PATH, text, Sample.CATALOGUE);
	}

	private static String faults(String text) {
		return String.join("\n", read(text).problems().stream().map(p -> p.toString().replace(PATH + ":", "")).toList());
	}
}
