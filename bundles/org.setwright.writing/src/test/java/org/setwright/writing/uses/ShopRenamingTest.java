package org.setwright.writing.uses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.JobNotWritten;
import org.setwright.writing.Desk;

/** Settings of the shop's own and their values are found and renamed everywhere. */
class ShopRenamingTest {
	private static final String SETTINGS = "settings:\n  - setting: misting   # misting\n    meaning: Misting wets the coil.\n    values: [off, {'once a day': At noon.}]\n"
			+ "    needed: OutdoorUnit( maker == \"Norrvik\" )\n  - setting: keypad lock\n    meaning: Locks.\n    values: [off, whole]\n";
	private static final String RULES = rule("one", "OutdoorUnit( )", "propose( MISTING, ONCE_A_DAY );\n    propose( KEYPAD_LOCK, OFF );")
			+ rule("two", "OutdoorUnit( )", "startUp( FAN, \"{setting MISTING}\", \"misting\", \"b\" );\n    propose( MISTING, OFF );");
	private static final String TABLE = "outdoor unit maker,=>  Misting,authority,source\nNorrvik,once a day,shop practice,once a day\n";
	private static final String JOB = "job: misting\noutdoor unit: { maker: Norrvik }\nexpect:\n  misting: { is: once a day, by: one }\n  keypad lock: 'off'\n";

	private static Desk desk() {
		return Desk.with(RULES).and("settings.yaml", SETTINGS).and("tables/t.csv", TABLE).and("jobs/a.yaml", JOB)
				.and("jobs/b.yaml", "job: B\nexpect:\n  'misting': once a day\n");
	}

	private static Thing at(Desk desk, String path, String word) {
		return Uses.at(desk.manuscript(), path, desk.text(path).indexOf(word) + 1).orElseThrow(() -> new AssertionError("nothing at " + word));
	}

	private static Desk renamed(String path, String word, String name) throws JobNotWritten {
		Desk desk = desk();
		assertEquals(List.of(), desk.problems());
		Renaming renaming = new Renaming(desk.manuscript(), at(desk, path, word), Set.of());
		assertEquals(Optional.empty(), renaming.refusal());
		assertEquals(Optional.empty(), renaming.refusal(name));
		desk.apply(renaming.edits(name));
		assertEquals(List.of(), desk.problems());
		return desk;
	}

	@ParameterizedTest
	@CsvSource({ "settings.yaml, misting", "rules/test.drl, MISTING", "tables/t.csv, Misting", "jobs/a.yaml, misting: {" })
	void aSettingIsRenamedFromWhereverItStands(String path, String word) throws JobNotWritten {
		Desk desk = renamed(path, word, "coil mist");
		assertEquals(SETTINGS.replace("setting: misting", "setting: coil mist"), desk.text("settings.yaml"));
		assertEquals(RULES.replace("MISTING", "COIL_MIST"), desk.text(Desk.FILE));
		assertEquals(TABLE.replace("=>  Misting", "=>  coil mist"), desk.text("tables/t.csv"));
		assertEquals(JOB.replace("misting: {", "coil mist: {"), desk.text("jobs/a.yaml"));
		assertEquals("job: B\nexpect:\n  coil mist: once a day\n", desk.text("jobs/b.yaml"));
	}

	@ParameterizedTest
	@CsvSource({ "settings.yaml, once a day", "rules/test.drl, ONCE_A_DAY", "tables/t.csv, once a day", "jobs/a.yaml, once a day" })
	void aValueIsRenamedInItsSettingAlone(String path, String word) throws JobNotWritten {
		Desk desk = renamed(path, word, "at noon");
		assertEquals(SETTINGS.replace("once a day", "at noon"), desk.text("settings.yaml"));
		assertEquals(RULES.replace("ONCE_A_DAY", "AT_NOON"), desk.text(Desk.FILE));
		assertEquals(TABLE.replace("Norrvik,once a day", "Norrvik,at noon"), desk.text("tables/t.csv"));
		assertEquals(JOB.replace("once a day", "at noon"), desk.text("jobs/a.yaml"));
	}

	@Test
	void theSameWordAsAValueOfAnotherSettingIsLeft() throws JobNotWritten {
		Desk desk = renamed("settings.yaml", "off, whole", "open");
		assertEquals(SETTINGS.replace("[off, whole]", "[open, whole]"), desk.text("settings.yaml"));
		assertEquals(RULES.replace("KEYPAD_LOCK, OFF", "KEYPAD_LOCK, OPEN"), desk.text(Desk.FILE));
		assertEquals(JOB.replace("'off'", "open"), desk.text("jobs/a.yaml"));
	}

	@Test
	void aMakerIsRenamedInWhatMakesAJobNeedASetting() throws JobNotWritten {
		Desk desk = renamed("tables/t.csv", "Norrvik", "Oskelund");
		assertEquals(SETTINGS.replace("Norrvik", "Oskelund"), desk.text("settings.yaml"));
	}

	@Test
	void namesThatAreTakenAreRefused() {
		Desk desk = desk();
		Renaming setting = new Renaming(desk.manuscript(), at(desk, "settings.yaml", "misting"), Set.of());
		assertTrue(setting.refusal("Keypad-Lock").orElseThrow().contains("already a setting"));
		assertTrue(setting.refusal("winter humidity limit").orElseThrow().contains("already a setting"));
		assertFalse(setting.refusal("Misting").isPresent());
		Renaming value = new Renaming(desk.manuscript(), at(desk, "settings.yaml", "once a day"), Set.of());
		assertTrue(value.refusal("Off").orElseThrow().contains("already a value"));
		assertTrue(value.refusal("unknown").orElseThrow().contains("means something else"));
	}

	@Test
	void theTradesOwnSettingsKeepTheirNames() {
		Desk desk = Desk.with(rule("x", "OutdoorUnit( )", "propose( HUMIDIFIER_RUNS, WITH_FAN );"));
		assertTrue(new Renaming(desk.manuscript(), at(desk, Desk.FILE, "HUMIDIFIER_RUNS"), Set.of()).refusal().isPresent());
		assertTrue(new Renaming(desk.manuscript(), at(desk, Desk.FILE, "WITH_FAN"), Set.of()).refusal().isPresent());
	}

	@Test
	void whereASettingComesFromBeginsWithWhatTheShopSaysOfIt() {
		Desk desk = desk();
		List<String> from = Uses.in(desk.manuscript()).definitions(at(desk, Desk.FILE, "MISTING")).stream().map(Mention::path).distinct().toList();
		assertEquals(List.of("settings.yaml", "rules/test.drl", "tables/t.csv"), from);
	}
}
