package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.since.Since;
import org.setwright.trade.catalogue.Setting;

/** Editions whose settings of the shop's own differ. */
class OwnSettingsTest {
	static final String PUMP = "  - setting: pump exercise\n    meaning: Turns the pump now and then.\n    values: [off, daily, weekly]\n";
	static final String NEEDED = PUMP + "    needed: OutdoorUnit( stages == 2 )\n";
	private static final String DAILY = Shop.rule("Daily", "shop practice", "OutdoorUnit( stages == 1 )", "propose( PUMP_EXERCISE, DAILY );");
	private static final String STAGES = Shop.rule("Stages", "shop practice", "OutdoorUnit( stages == 1 )", "propose( COOL_STAGES, 1 );");
	private static final String OWN = "the settings of the shop's own changed";

	@TempDir
	Path folder;

	static String file(String... settings) {
		return "settings:\n" + String.join("", settings);
	}

	private static List<String> told(Impact impact) {
		assertEquals("", impact.fault());
		return impact.jobs().stream().flatMap(j -> j.differences().stream().map(d -> j.job().name() + ": " + d.point().words() + " " + d.before() + " -> "
				+ d.after() + " by " + String.join(" or ", d.causes().stream().map(c -> c.shown()).toList()))).toList();
	}

	private static List<String> impact(Shop shop) throws NotDone {
		return told(shop.editions().impact(shop.editions().notKept(), Progress.UNWATCHED).orElseThrow());
	}

	private Shop shop() throws IOException, NotDone {
		return Shop.in(folder).write("jobs/small.yaml", Shop.job("Small", 1)).write("jobs/large.yaml", Shop.job("Large", 2)).write("rules/a.drl", STAGES);
	}

	private static Since since(Shop shop, String job) throws NotDone {
		BookAt last = shop.editions().at(shop.editions().demandLast());
		JobCase asked = shop.editions().shelf().job(last, "jobs/" + job + ".yaml").job();
		Setting setting = shop.editions().shelf().catalogue(last).setting("PUMP_EXERCISE").orElseThrow();
		return shop.editions().since(asked, setting);
	}

	private static List<String> told(Since since) {
		return since.origins().stream().map(o -> since.value() + " since " + o.edition().title() + ", before " + o.valueBefore() + " by "
				+ String.join(" or ", o.causes().stream().map(c -> c.shown()).toList())).toList();
	}

	@Test
	void aNewSettingAndTheRuleThatProposesItAreResponsibleTogether() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.keep("First");
			shop.write("settings.yaml", file(PUMP)).write("rules/b.drl", DAILY);
			assertEquals(List.of("Small: pump exercise not needed -> daily by " + OWN + " together with \"Daily\": added"), impact(shop));
			shop.keep("Pumps");
			assertEquals(List.of("daily since Pumps, before not needed by " + OWN + " together with \"Daily\": added"), told(since(shop, "small")));
		}
	}

	@Test
	void aRuleForASettingThatWasThereIsResponsibleAlone() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP)).keep("First");
			shop.write("settings.yaml", file(PUMP.replace("now and then", "at times"))).write("rules/b.drl", DAILY);
			assertEquals(List.of("Small: pump exercise not needed -> daily by \"Daily\": added"), impact(shop));
			shop.keep("Daily");
			assertEquals(List.of("daily since Daily, before not needed by \"Daily\": added"), told(since(shop, "small")));
		}
	}

	@Test
	void whoNeedsASettingIsForTheSettingsToAnswer() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP)).keep("First");
			shop.write("settings.yaml", file(NEEDED)).write("rules/a.drl", STAGES.replace("always", "mostly"));
			assertEquals(List.of("Large: pump exercise not needed -> gap by " + OWN), impact(shop));
			shop.keep("Needed");
			assertEquals(List.of("gap since Needed, before not needed by " + OWN), told(since(shop, "large")));
			shop.write("settings.yaml", file(PUMP));
			assertEquals(List.of("Large: pump exercise gap -> not needed by " + OWN), impact(shop));
		}
	}

	@Test
	void otherWordsOfAMeaningMeanNothingForAnyJob() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(NEEDED)).write("rules/b.drl", DAILY).keep("First");
			Kept first = shop.editions().demandLast();
			shop.write("settings.yaml", file(NEEDED.replace("now and then", "at times")));
			assertEquals(List.of(), impact(shop));
			Kept reworded = shop.keep("Plainer");
			assertTrue(!first.equals(reworded));
			assertEquals(List.of("daily since First, before  by "), told(since(shop, "small")));
			assertEquals(List.of("gap since First, before  by "), told(since(shop, "large")));
		}
	}

	@Test
	void aSettingThatGoesWithItsRuleIsNotNeededAnyMore() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP)).write("rules/b.drl", DAILY).keep("First");
			shop.delete("settings.yaml").delete("rules/b.drl");
			assertEquals(List.of("Small: pump exercise daily -> not needed by \"Daily\": removed"), impact(shop));
		}
	}

	@Test
	void whereTheEarlierRulesDoNotGoWithTheLaterSettingsTheRuleThatChangedIsNamed() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP)).write("rules/b.drl", DAILY).keep("First");
			shop.write("settings.yaml", file(PUMP.replace("daily", "hourly"))).write("rules/b.drl", DAILY.replace("EXERCISE, DAILY", "EXERCISE, HOURLY"));
			assertEquals(List.of("Small: pump exercise daily -> hourly by \"Daily\": outcome changed"), impact(shop));
		}
	}

	@Test
	void aBrokenFileInTheMiddleIsPassedOver() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP)).write("rules/b.drl", DAILY).keep("First");
			Kept broken = shop.write("settings.yaml", file(PUMP).replace("values", "valeus")).keep("Broken");
			shop.write("settings.yaml", file(NEEDED)).keep("Mended");
			Since since = since(shop, "small");
			assertEquals(List.of("daily since First, before  by "), told(since));
			assertEquals(List.of(broken), since.passedOver());
			assertEquals(List.of("gap since Mended, before not needed by " + OWN), told(since(shop, "large")));
			Impact none = shop.editions().impact(shop.editions().changes(shop.editions().at(broken), shop.editions().inHand()), Progress.UNWATCHED).orElseThrow();
			assertTrue(none.fault().startsWith("No job could be run, because edition " + broken.shown() + " has errors: settings.yaml"), none.fault());
		}
	}

	@Test
	void theBookGoesBackToTheSettingsItHad() throws IOException, NotDone {
		try (Shop shop = shop()) {
			Kept first = shop.keep("First");
			Kept second = shop.write("settings.yaml", file(NEEDED)).keep("Second");
			Kept third = shop.write("settings.yaml", file(PUMP)).keep("Third");
			shop.editions().restore(second);
			assertEquals(file(NEEDED), shop.read("settings.yaml"));
			assertEquals(second.content(), shop.keep("Back").content());
			shop.editions().restore(first);
			assertTrue(!shop.folder().resolve("settings.yaml").toFile().exists());
			BookChanges changes = shop.editions().changes(shop.editions().at(third), shop.editions().inHand());
			assertEquals(Optional.empty(), shop.editions().shelf().catalogue(changes.after()).setting("PUMP_EXERCISE"));
			assertTrue(shop.editions().shelf().catalogue(changes.before()).setting("PUMP_EXERCISE").isPresent());
		}
	}

	private static final String GUARD = "  # asked for by Odd\n  - { setting: frost guard, meaning: When the pump starts., values: 34 °F to 45 °F } # for floors\n";

	private static List<String> told(BookChanges changes) {
		return changes.settings().stream().map(c -> c.shown() + (c.wordsOnly() ? " (words)" : "")).toList();
	}

	@Test
	void settingsAreToldOneByOne() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP, GUARD)).keep("First");
			shop.write("settings.yaml", "# ours\n" + file(GUARD, NEEDED.replace("weekly", "monthly"), PUMP.replace("pump exercise", "fan exercise")));
			BookChanges changes = shop.editions().notKept();
			assertEquals(List.of("setting pump exercise: values and which jobs need it changed", "setting fan exercise: added"), told(changes));
			assertEquals(List.of(), changes.files());
			shop.write("settings.yaml", file(PUMP.replace("now and then", "at times").replace("exercise\n", "exercise\n    group: limits\n")));
			assertEquals(List.of("setting pump exercise: meaning and group changed (words)", "setting frost guard: removed"), told(shop.editions().notKept()));
			assertEquals(GUARD.stripTrailing(), shop.editions().notKept().settings().get(1).before().orElseThrow().text());
		}
	}

	@Test
	void aSettingUnderANewNameIsTheSame() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP, GUARD)).keep("First");
			shop.write("settings.yaml", file(PUMP.replace("pump exercise", "pump run"), GUARD.replace("by Odd", "by Trine")));
			assertEquals(List.of("setting pump run: renamed from pump exercise", "setting frost guard: wording changed (words)"),
					told(shop.editions().notKept()));
		}
	}

	@Test
	void aFileWithErrorsIsToldAsAWholeAndSoIsOneInAnotherOrder() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("settings.yaml", file(PUMP, GUARD)).keep("First");
			for (String other : List.of(file(PUMP, GUARD).replace("values", "valeus"), file(GUARD, PUMP))) {
				BookChanges changes = shop.write("settings.yaml", other).editions().notKept();
				assertEquals(List.of(), told(changes));
				assertEquals(List.of("settings.yaml"), changes.files());
			}
			assertTrue(shop.write("settings.yaml", file(PUMP, GUARD).replace("\n", "\r\n")).editions().notKept().none());
		}
	}

	@Test
	void theSuggestedMessageNamesThem() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.keep("First");
			shop.write("settings.yaml", file(PUMP));
			assertEquals("setting pump exercise: added", shop.editions().suggestion());
			shop.write("settings.yaml", file(PUMP, GUARD)).write("rules/b.drl", DAILY);
			assertEquals("1 rule added, 2 settings added\n\n- \"Daily\": added\n- setting pump exercise: added\n- setting frost guard: added",
					shop.editions().suggestion());
		}
	}
}
