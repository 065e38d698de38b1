package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setwright.book.JobEdit.Added;
import org.setwright.book.JobEdit.Answered;
import org.setwright.book.JobEdit.Expected;
import org.setwright.book.JobEdit.Fitted;
import org.setwright.book.JobEdit.Named;
import org.setwright.book.JobEdit.NotExpected;
import org.setwright.book.JobEdit.Noted;
import org.setwright.book.JobEdit.Removed;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

class JobWriterTest {
	private static final String PATH = "jobs/larch.yaml";
	private static final String HAND_WRITTEN = """
			# first visit
			job: Larch Lane 14, upstairs   # the flat

			pump:   # behind the door
			    maker: Norrvik      # nameplate

			    stages: 2
			wires: [red, { colour: blue, gauge: 18 AWG }]   # at the wall
			lamp: { colour: red }
			not fitted: [tank]
			expect:
			  pump speed: 2         # agreed
			""";
	private final JobWriter writer = new JobWriter(Sample.CATALOGUE);

	@Test
	void anAnswerIsReplacedWhereItStands() throws JobNotWritten {
		assertEdit(answer("Pump", 0, "maker", "Oskelund, Air"), "maker: Norrvik      #", "maker: Oskelund, Air      #");
		assertEdit(answer("Lamp", 0, "colour", "blue"), "lamp: { colour: red }", "lamp: { colour: blue }");
		assertEdit(answer("Wire", 1, "gauge", "20 AWG"), "gauge: 18 AWG", "gauge: 20 AWG");
		assertEdit(answer("Wire", 0, "colour", "orange"), "[red, {", "[orange, {");
	}

	@Test
	void aNewAnswerStandsAfterThoseAskedBefore() throws JobNotWritten {
		assertEdit(answer("Pump", 0, "runningHeat", "4 kW"), "    stages: 2\n", "    stages: 2\n    running heat: 4 kW\n");
		assertEdit(answer("Pump", 0, "kind", "air-driven pump"), "    maker: Norrvik", "    kind: air-driven pump\n    maker: Norrvik");
		assertEdit(answer("Wire", 1, "landsAt", "R, C"), "gauge: 18 AWG }", "gauge: 18 AWG, lands at: 'R, C' }");
		assertEdit(answer("Wire", 0, "gauge", "18 AWG"), "[red, {", "[{ colour: red, gauge: 18 AWG }, {");
		assertEdit(answer("Wire", 2, "colour", "orange"), "18 AWG }]", "18 AWG }, { colour: orange }]");
		assertEdit(answer("House", 0, "floorArea", "1500 ft2"), "not fitted", "house: { floor area: 1500 ft2 }\nnot fitted");
		assertEdit(answer("Tank", 0, "height", "4 ft"), "not fitted: [tank]\n", "tanks:\n  - { height: 4 ft }\n");
	}

	@Test
	void anAnswerTakenBackBecomesUnknown() throws JobNotWritten {
		assertEdit(new Answered(at("Pump", 0, "maker"), Answer.unknown()), "maker: Norrvik      #", "maker: unknown      #");
		assertEdit(new Answered(at("Wire", 0, "colour"), Answer.unknown()), "[red, {", "[unknown, {");
		assertEdit(new Answered(at("Pump", 0, "ratio"), Answer.unknown()), "", "");
	}

	@Test
	void whetherThereIsAnyIsWrittenShort() throws JobNotWritten {
		assertEdit(new Fitted(kind("Lamp"), Job.Presence.NONE), "lamp: { colour: red }", "lamp: none");
		assertEdit(new Fitted(kind("Lamp"), Job.Presence.UNKNOWN), "lamp: { colour: red }\n", "");
		assertEdit(new Fitted(kind("Tank"), Job.Presence.PRESENT), "not fitted: [tank]\n", "tanks:\n  - unknown\n");
		assertEdit(new Fitted(kind("Tank"), Job.Presence.UNKNOWN), "not fitted: [tank]\n", "");
		assertEdit(new Fitted(kind("House"), Job.Presence.PRESENT), "not fitted", "house: fitted\nnot fitted");
		String everythingElse = "job: A\nnot fitted: everything else # sure\n";
		assertEquals("job: A\nlamp: unknown\nnot fitted: everything else # sure\n",
				writer.edit(PATH, everythingElse, new Fitted(kind("Lamp"), Job.Presence.UNKNOWN)));
		assertEquals("job: A\nlamp: fitted\nnot fitted: everything else # sure\n",
				writer.edit(PATH, everythingElse, new Fitted(kind("Lamp"), Job.Presence.PRESENT)));
	}

	@Test
	void commentsInsideWhatIsRemovedMoveAboveIt() throws JobNotWritten {
		assertEdit(new Fitted(kind("Pump"), Job.Presence.NONE),
				"pump:   # behind the door\n    maker: Norrvik      # nameplate\n\n    stages: 2\n",
				"# behind the door\n# nameplate\npump: none\n");
	}

	@Test
	void itemsAreAddedAndRemoved() throws JobNotWritten {
		assertEdit(new Added(kind("Wire")), "18 AWG }]", "18 AWG }, unknown]");
		assertEdit(new Removed(kind("Wire"), 0), "[red, {", "[{");
		assertEdit(new Removed(kind("Wire"), 1), ", { colour: blue, gauge: 18 AWG }]", "]");
		String list = "job: A\nwires:\n- red # one\n# between\n- colour: blue\n  gauge: 18 AWG\nlamp: none\n";
		assertEquals(list.replace("lamp", "- unknown\nlamp"), writer.edit(PATH, list, new Added(kind("Wire"))));
		assertEquals(list.replace("- red # one", "# one"), writer.edit(PATH, list, new Removed(kind("Wire"), 0)));
		assertEquals(list.replace("- colour: blue\n  gauge: 18 AWG\n", ""), writer.edit(PATH, list, new Removed(kind("Wire"), 1)));
	}

	@Test
	void nameNotesAndExpectations() throws JobNotWritten {
		assertEdit(new Named("Larch: 14"), "job: Larch Lane 14, upstairs   #", "job: 'Larch: 14'   #");
		assertEdit(new Noted("Tight attic."), "\n\npump:", "\nnotes: Tight attic.\n\npump:");
		assertEdit(new Noted("Tight\nattic."), "\n\npump:", "\nnotes: |\n  Tight\n  attic.\n\npump:");
		assertEdit(new Expected(setting("PUMP_SPEED"), new JobCase.Gap(Position.whole(PATH))), "speed: 2    ", "speed: gap    ");
		assertEdit(new Expected(setting("LAMP_MODE"), new JobCase.Settled(value(setting("LAMP_MODE").domain().read("red")), Position.whole(PATH))),
				"# agreed\n", "# agreed\n  lamp mode: red\n");
		assertEdit(new NotExpected(setting("PUMP_SPEED")), "expect:\n  pump speed: 2         # agreed\n", "# agreed\n");
	}

	@Test
	void lineEndsAndByteOrderMarkStayAsTheyWere() throws JobNotWritten {
		String windows = "\uFEFF" + HAND_WRITTEN.replace("\n", "\r\n");
		String edited = writer.edit(PATH, windows, answer("Pump", 0, "runningHeat", "4 kW"));
		assertEquals(windows.replace("stages: 2\r\n", "stages: 2\r\n    running heat: 4 kW\r\n"), edited);
		assertEquals("job: B", writer.edit(PATH, "job: A", new Named("B")));
		assertEquals("job: A\nlamp: none\n".strip(), writer.edit(PATH, "job: A", new Fitted(kind("Lamp"), Job.Presence.NONE)));
	}

	@Test
	void whatCannotBeDoneIsRefusedAndSaid() {
		assertRefused("job: A\npump: { stages: 9 }\n", new Named("B"),
				"jobs/larch.yaml:2:17: The file has errors, so it is not changed. Write a whole number from 1 to 4.");
		assertRefused("job: A\n", new Fitted(kind("House"), Job.Presence.NONE), "jobs/larch.yaml: Every job has a house. Nothing was changed.");
		assertRefused("job: A\nwires: [red]\n", new Removed(kind("Wire"), 0), "jobs/larch.yaml: The last of the wires cannot just be"
				+ " taken out: say whether there are none, or nobody knows. Nothing was changed.");
		assertRefused("job: A\nwires: [red]\n", answer("Wire", 3, "colour", "red"), "jobs/larch.yaml: There is no wire 4. Nothing was changed.");
		assertRefused("job: A\n", new Named(" "), "jobs/larch.yaml: A job needs a name on one line, at most 200 characters. Nothing was changed.");
		assertRefused("job: A\n", new Answered(at("Pump", 0, "maker"), Answer.of(new Value.Words("unknown"))),
				"jobs/larch.yaml: The change cannot be made without risk to what else the file says. Make it in the file by hand.");
	}

	@Test
	void aFreshFileIsTidy() throws JobNotWritten {
		JobCase read = JobReader.read(PATH, HAND_WRITTEN, Sample.CATALOGUE).job();
		Map<Setting, JobCase.Expectation> expected = new LinkedHashMap<>(read.expected());
		expected.put(setting("LAMP_MODE"), new JobCase.NotNeeded(Position.whole(PATH)));
		JobCase job = new JobCase(PATH, read.name(), "Tight attic.\nAsk: ladder.", read.job().with(kind("Lamp"), Job.Entry.NONE), expected, Map.of());
		assertEquals("""
				job: Larch Lane 14, upstairs
				notes: |
				  Tight attic.
				  Ask: ladder.
				pump: { maker: Norrvik, stages: 2 }
				wires:
				  - { colour: red }
				  - { colour: blue, gauge: 18 AWG }
				not fitted: [lamp, tank]
				expect:
				  pump speed: 2
				  lamp mode: not needed
				""", writer.write(job));
	}

	@Test
	void longNotesAreFolded() throws JobNotWritten {
		String notes = "The maker's sheet decides the valve; nothing is missing at the wall: there is no other heat to call for, and no white one.";
		assertEquals("""
				job: A
				notes: >-
				  The maker's sheet decides the valve; nothing is missing at the wall: there is no other heat to
				  call for, and no white one.
				""", writer.write(new JobCase(PATH, "A", notes, Job.blank(), Map.of(), Map.of())));
	}

	@Test
	void aValueThatWouldNotReadBackIsRefused() {
		FactKind pump = kind("Pump");
		Job job = Job.blank().with(pump, Job.Entry.of(List.of(pump.create(Map.of(pump.field("maker").orElseThrow(), new Value.Words("unknown"))))));
		JobNotWritten refused = assertThrows(JobNotWritten.class, () -> writer.write(new JobCase(PATH, "A", "", job, Map.of(), Map.of())));
		assertEquals("The job cannot be written: the pump's maker \"unknown\" would not read back the same. Change that value.", refused.getMessage());
	}

	private void assertEdit(JobEdit edit, String before, String after) throws JobNotWritten {
		assertEquals(HAND_WRITTEN.replace(before, after), writer.edit(PATH, HAND_WRITTEN, edit));
	}

	private void assertRefused(String text, JobEdit edit, String why) {
		assertEquals(why, assertThrows(JobNotWritten.class, () -> writer.edit(PATH, text, edit)).problem().toString());
	}

	private static Answered answer(String kind, int item, String field, String text) {
		return new Answered(at(kind, item, field), Answer.of(value(field(kind, field).domain().read(text))));
	}

	private static Value value(java.util.Optional<Value> read) {
		return read.orElseThrow();
	}

	private static JobField at(String kind, int item, String field) {
		return JobField.of(kind(kind), item, field(kind, field));
	}

	private static Field field(String kind, String field) {
		return kind(kind).field(field).orElseThrow();
	}

	private static FactKind kind(String name) {
		return Sample.CATALOGUE.kind(name).orElseThrow();
	}

	private static Setting setting(String id) {
		return Sample.CATALOGUE.setting(id).orElseThrow();
	}
}
