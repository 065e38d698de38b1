package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** A shop adds settings to those of the trade in one file. */
class ShopSettingsTest {
	private static final String ONE = """
			settings:
			  - setting: water panel reminder
			    group: humidity
			    meaning: How often somebody is reminded of the water panel.
			    values: [off, {once a season: At the first call of winter.}, twice a season]
			    needed: Humidifier( )
			""";

	private static ShopSettingsText read(String text) {
		return ShopSettingsReader.read(text, Trade.catalogue());
	}

	private static Domain values(String written) {
		ShopSettingsText read = read("settings:\n  - setting: pump exercise\n    meaning: Turns the pump.\n    values: " + written + "\n");
		assertEquals(List.of(), read.problems());
		return read.settings().own().get(0).setting().domain();
	}

	private static String problems(String text) {
		return read(text).problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
	}

	@Test
	void aSettingStandsInTheCatalogueBehindTheOthersOfItsGroup() {
		ShopSettingsText read = read(ONE);
		assertEquals(List.of(), read.problems());
		Setting setting = read.settings().catalogue().setting("WATER_PANEL_REMINDER").orElseThrow();
		assertEquals("water panel reminder", setting.label());
		assertEquals("Humidifier( )", setting.requiredWhen());
		List<String> humidity = read.settings().catalogue().settings().stream().filter(s -> s.group().equals("humidity")).map(Setting::label).toList();
		assertEquals("water panel reminder", humidity.get(humidity.size() - 1));
		assertEquals(Trade.catalogue().settings().size() + 1, read.settings().catalogue().settings().size());
		assertFalse(Trade.catalogue().setting("WATER_PANEL_REMINDER").isPresent());
	}

	@Test
	void eachKnowsWhereItStands() {
		ShopSetting own = read(ONE).settings().own().get(0);
		assertEquals(new Position("settings.yaml", 2, 14), own.at());
		assertEquals(Optional.of(new Position("settings.yaml", 6, 13)), own.neededAt());
	}

	@Test
	void listedValuesHaveAWordForRulesAndTheirOwnMeaning() {
		Domain.Choices choices = (Domain.Choices) read(ONE).settings().own().get(0).setting().domain();
		assertEquals(List.of("OFF", "ONCE_A_SEASON", "TWICE_A_SEASON"), choices.options().stream().map(o -> o.id()).toList());
		assertEquals("At the first call of winter.", choices.options().get(1).meaning());
	}

	@Test
	void othersAreARangeOrYesAndNo() {
		assertEquals(new Domain.YesNo(), values("yes or no"));
		assertEquals(new Domain.Whole(0, 4), values("0 to 4"));
		assertEquals(new Domain.Measure(Unit.FAHRENHEIT, 34, 45), values("34 °F to 45 °F"));
		assertEquals(new Domain.Measure(Unit.MINUTE, 1, 60), values("1 to 60 min"));
		assertEquals(new Domain.Measure(Unit.NONE, 0.5, 2), values("0.5 to 2"));
		assertEquals(new Domain.Measure(Unit.MINUTE, 30, 120), values("30 min to 2 h"));
	}

	@ParameterizedTest
	@CsvSource({ "yes or no", "0 to 4", "34 °F to 45 °F", "30 min to 120 min", "0.5 to 2" })
	void whatIsReadIsWrittenTheSame(String written) {
		assertEquals(written, ValuesText.of(ValuesText.read(written).orElseThrow()));
	}

	@Test
	void aValueOutsideARangeIsNone() {
		assertTrue(values("34 °F to 45 °F").read("45 °F").isPresent());
		assertFalse(values("34 °F to 45 °F").read("46 °F").isPresent());
		assertEquals(5.0, new Quantity(41, Unit.FAHRENHEIT).in(Unit.CELSIUS), 1e-9);
		assertTrue(values("34 °F to 45 °F").read("5 °C").isPresent());
	}

	@Test
	void withoutAGroupOrANeedItIsStillASetting() {
		Setting setting = read("settings:\n  - { setting: keypad lock, meaning: Keeps guests out., values: yes or no }").settings().own().get(0).setting();
		assertEquals("settings of the shop's own", setting.group());
		assertEquals(Setting.OPTIONAL, setting.requiredWhen());
	}

	@Test
	void aFileThatSaysNothingAddsNothing() {
		assertEquals(List.of(), read("").problems());
		assertEquals(List.of(), read("settings:\n").problems());
		assertEquals(Trade.catalogue(), read("# only words\n").settings().catalogue());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
			"setting: winter humidity limit                    | 2:14 | There is already a setting",
			"setting: Winter-Humidity                          | 2:14 | There is already a setting",
			"setting: no cautions                              | 2:14 | begins a list in job files",
			"setting: unknown                                  | 2:14 | means something else",
			"setting: '2nd relay'                              | 2:14 | cannot be a name",
			"setting: 'a: b'                                   | 2:14 | cannot be a name",
			"setting:                                          | 2:13 | has no name" })
	void aNameThatCannotBeIsExplainedInItsPlace(String line, String at, String why) {
		String problems = problems("settings:\n  - " + line.strip() + "\n    meaning: m\n    values: 0 to 4\n");
		assertTrue(problems.startsWith("settings.yaml:" + at), problems);
		assertTrue(problems.contains(why), problems);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
			"4 to 0                       | does not say what may be set",
			"45 °F to 34 °F               | does not say what may be set",
			"34 °F to 45 ft               | does not say what may be set",
			"warm                         | does not say what may be set",
			"[]                           | does not say what may be set",
			"[off, OFF]                   | already a value",
			"[gap]                        | without a value",
			"[yes, no]                    | means something else",
			"[~]                          | without a name",
			"[{a: {b: c}}]                | list or group",
			"                             | does not say what may be set" })
	void valuesThatCannotBeAreExplained(String values, String why) {
		String problems = problems("settings:\n  - setting: relay\n    meaning: m\n    values: " + (values == null ? "" : values) + "\n");
		assertTrue(problems.contains(why), problems);
		assertTrue(problems.startsWith("settings.yaml:4:"), problems);
	}

	@Test
	void whatIsMissingOrMisspeltIsNamed() {
		assertTrue(problems("settings:\n  - setting: relay\n").contains("Nobody can tell what this setting is for."));
		assertTrue(problems("settings:\n  - setting: relay\n").contains("Nobody can tell what may be set."));
		assertTrue(problems("setting:\n  - setting: relay\n").contains("There is no \"setting\" in settings.yaml."));
		assertTrue(problems("settings: relay\n").contains("A list of settings is expected here."));
		assertTrue(problems("- relay\n").contains("no list of them"));
		Problem misspelt = read(ONE.replace("meaning:", "meanin:")).problems().stream().filter(p -> p.what().contains("meanin")).findFirst().orElseThrow();
		assertEquals(Optional.of(new Mend.Replace("meanin", List.of("meaning"))), misspelt.mend());
	}

	@Test
	void twoOfOneNameAreRefused() {
		assertTrue(problems(ONE + ONE.substring(ONE.indexOf("  -")).replace("water panel", "Water-Panel")).contains("on line 2"));
	}

	@Test
	void nothingThatStandsInTheFileMakesReadingFail() {
		Random random = new Random(11);
		String signs = "[]{}:-,#'\"\n\t &*!|>~ °\u0000aZ9";
		int sound = 0;
		for (int i = 0; i < 3000; i++) {
			StringBuilder text = new StringBuilder(ONE);
			for (int change = random.nextInt(4); change >= 0; change--) {
				int at = random.nextInt(text.length());
				if (random.nextBoolean()) {
					text.deleteCharAt(at);
				} else {
					text.insert(at, signs.charAt(random.nextInt(signs.length())));
				}
			}
			ShopSettingsText read = read(text.toString());
			assertTrue(read.sound() || read.problems().stream().allMatch(p -> !p.what().isBlank() && !p.remedy().isBlank()), text.toString());
			sound += read.sound() ? 1 : 0;
		}
		assertTrue(sound > 100 && sound < 2900, "both kinds have to occur, not " + sound + " sound ones");
	}

	@Test
	void wordsForRulesAreMadeOfNames() {
		assertEquals("ONCE_A_SEASON", ShopWords.word("once a season"));
		assertEquals("VENTILATION_FORCEE", ShopWords.word("ventilation forcée"));
		assertEquals("once a season", ShopWords.name("ONCE_A_SEASON"));
	}
}
