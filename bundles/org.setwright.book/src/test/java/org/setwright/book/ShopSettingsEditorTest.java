package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Setting;

class ShopSettingsEditorTest {
	private static final ShopSettingDraft LOCK = new ShopSettingDraft("keypad lock", "", "Keeps guests out.", "off, part, whole", "");
	private static final String ONE = """
			# what we set besides
			settings:
			    - setting: pump exercise   # since the spring
			      group: limits
			      meaning: Turns the pump.
			      values: [off, daily]
			""";

	private static String add(String text, ShopSettingDraft draft) {
		ShopSettingsEditor.Written written = ShopSettingsEditor.with(text, draft, Trade.catalogue());
		assertEquals(List.of(), written.problems());
		return written.text();
	}

	private static Setting setting(String text, String id) {
		return ShopSettingsReader.read(text, Trade.catalogue()).settings().catalogue().setting(id).orElseThrow();
	}

	@Test
	void theFirstSettingBeginsTheFile() {
		assertEquals("settings:\n  - setting: keypad lock\n    meaning: Keeps guests out.\n    values: [off, part, whole]\n", add("", LOCK));
		assertEquals("# ours\nsettings:\n  - setting: keypad lock\n    meaning: Keeps guests out.\n    values: [off, part, whole]\n", add("# ours\n", LOCK));
		assertEquals("settings:\n  - setting: keypad lock\n    meaning: Keeps guests out.\n    values: [off, part, whole]\n", add("settings:\n", LOCK));
	}

	@Test
	void anotherStandsBehindThoseThatAreThereIndentedLikeThem() {
		assertEquals(ONE + "    - setting: keypad lock\n      meaning: Keeps guests out.\n      values: [off, part, whole]\n", add(ONE, LOCK));
	}

	@Test
	void betweenBracketsItStandsBetweenBraces() {
		String flow = "settings: [{ setting: a, meaning: b, values: yes or no }]\n";
		assertEquals("settings: [{ setting: a, meaning: b, values: yes or no }, { setting: keypad lock, meaning: Keeps guests out., values: [off, part, whole] }]\n",
				add(flow, LOCK));
	}

	@Test
	void rangesConditionsAndAwkwardWordsReadBackAsTheyWereMeant() {
		ShopSettingDraft draft = new ShopSettingDraft("frost guard", "limits", "Starts at: the limit # of frost", "34 °F to 45 °F",
				"OutdoorUnit( kind in ( AIR_SOURCE_HEAT_PUMP, GROUND_SOURCE_HEAT_PUMP ) )");
		Setting setting = setting(add(ONE, draft), "FROST_GUARD");
		assertEquals(draft.meaning(), setting.meaning());
		assertEquals("limits", setting.group());
		assertEquals(draft.needed(), setting.requiredWhen());
		assertEquals("34 °F to 45 °F", ValuesText.of(setting.domain()));
	}

	@Test
	void whatIsWrongIsToldAndNothingIsToBeWritten() {
		List<Problem> problems = ShopSettingsEditor.with(ONE, new ShopSettingDraft("Pump-Exercise", "", "", "", ""), Trade.catalogue()).problems();
		assertTrue(problems.stream().anyMatch(p -> p.what().contains("already a setting")), problems.toString());
		assertTrue(problems.stream().anyMatch(p -> p.what().contains("what this setting is for")), problems.toString());
		assertTrue(problems.stream().anyMatch(p -> p.what().contains("what may be set")), problems.toString());
	}

	@Test
	void aFileWithMistakesIsNotAddedTo() {
		String broken = ONE + "   - [";
		ShopSettingsEditor.Written written = ShopSettingsEditor.with(broken, LOCK, Trade.catalogue());
		assertEquals(broken, written.text());
		assertEquals(1, written.problems().size());
	}

	@Test
	void aValueStandsBehindTheOthersOfItsSetting() {
		assertEquals(Optional.of(ONE.replace("[off, daily]", "[off, daily, twice a week]")),
				ShopSettingsEditor.withValue(ONE, setting(ONE, "PUMP_EXERCISE"), "twice a week", Trade.catalogue()));
		String onLines = ONE.replace("[off, daily]", "\n        - off\n        - daily");
		assertEquals(Optional.of(onLines + "        - twice a week\n"),
				ShopSettingsEditor.withValue(onLines, setting(onLines, "PUMP_EXERCISE"), "twice a week", Trade.catalogue()));
	}

	@Test
	void aValueThatIsThereOrThatNobodyMayUseIsNotAdded() {
		assertEquals(Optional.empty(), ShopSettingsEditor.withValue(ONE, setting(ONE, "PUMP_EXERCISE"), "Daily", Trade.catalogue()));
		assertEquals(Optional.empty(), ShopSettingsEditor.withValue(ONE, setting(ONE, "PUMP_EXERCISE"), "gap", Trade.catalogue()));
		assertEquals(Optional.empty(), ShopSettingsEditor.withValue(ONE, Trade.catalogue().setting("HUMIDIFIER_RUNS").orElseThrow(), "daily", Trade.catalogue()));
	}
}
