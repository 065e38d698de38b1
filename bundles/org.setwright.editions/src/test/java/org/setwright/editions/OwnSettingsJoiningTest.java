package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.editions.OwnSettingsTest.NEEDED;
import static org.setwright.editions.OwnSettingsTest.PUMP;
import static org.setwright.editions.OwnSettingsTest.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.NotDone;

/** Joining lines that both changed settings of the shop's own. */
class OwnSettingsJoiningTest {
	private static final String GUARD = "  # asked for by Odd\n  - { setting: frost guard, meaning: When the pump starts., values: 34 °F to 45 °F } # floors\n";
	private static final String SIREN = "  - setting: siren\n    values: yes or no\n    meaning: Whether it sounds.\n";
	private static final String LAMP = "  - setting: lamp\n    values: yes or no\n    meaning: Whether it shines.\n";

	@TempDir
	Path folder;

	/** Joins two lines that came from {@code base}. @param base empty for no file */
	private JoinPlan plan(Shop shop, String base, String here, String there) throws IOException, NotDone {
		if (!base.isEmpty()) {
			shop.write("settings.yaml", base);
		}
		shop.keep("First");
		String line = shop.editions().repo().line().orElseThrow();
		shop.editions().lines().begin("trial");
		shop.write("settings.yaml", there).keep("On trial", Shop.ODD);
		shop.editions().lines().open(line);
		shop.write("settings.yaml", here).keep("In force", Shop.TRINE);
		return shop.editions().lines().join("trial");
	}

	private static String joined(Shop shop, JoinPlan plan) throws IOException, NotDone {
		assertEquals(List.of(), plan.conflicts());
		shop.editions().lines().keepJoined(plan, "Joined", Optional.of(Shop.MARIT));
		assertTrue(shop.editions().shelf().ownSettings(shop.editions().inHand()).isPresent());
		return shop.read("settings.yaml");
	}

	private String joined(String base, String here, String there) throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			return joined(shop, plan(shop, base, here, there));
		}
	}

	@Test
	void bothAddASettingAtTheEnd() throws IOException, NotDone {
		assertEquals(file(PUMP, SIREN, LAMP), joined(file(PUMP), file(PUMP, SIREN), file(PUMP, LAMP)));
	}

	@Test
	void bothBeginTheFile() throws IOException, NotDone {
		assertEquals(file(SIREN, GUARD), joined("", file(SIREN), file(GUARD)));
	}

	@Test
	void aChangeARemovalAndAnAdditionOfTheOtherLineAllComeIn() throws IOException, NotDone {
		assertEquals("# ours\n" + file(NEEDED, LAMP, GUARD.replace("45", "50")),
				joined(file(PUMP, SIREN, GUARD), "# ours\n" + file(PUMP, SIREN, GUARD.replace("45", "50")), file(NEEDED, LAMP, GUARD)));
	}

	@Test
	void aHeadingOnTheOtherLineComesInWithWhatIsHere() throws IOException, NotDone {
		assertEquals("# theirs\n" + file(NEEDED, GUARD), joined(file(PUMP), file(NEEDED), "# theirs\n" + file(PUMP, GUARD)));
	}

	@Test
	void aSettingThatBothChangedIsAConflictAlsoWhereTheLinesDoNotTouch() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			String there = PUMP.replace("pump exercise", "pump run");
			JoinPlan plan = plan(shop, file(PUMP, GUARD), file(NEEDED, GUARD), file(there, GUARD, LAMP));
			Conflict conflict = plan.conflicts().get(0);
			assertEquals(List.of("setting pump exercise"), plan.conflicts().stream().map(Conflict::what).toList());
			assertEquals(List.of(PUMP.stripTrailing(), NEEDED.stripTrailing(), there.stripTrailing()), List.of(conflict.base().orElseThrow(),
					conflict.ours().orElseThrow(), conflict.theirs().orElseThrow()));
			assertEquals(file(there, GUARD, LAMP), joined(shop, plan.decided(shop.editions().repo(), conflict, conflict.theirs())));
		}
	}

	@Test
	void aSettingRemovedHereAndChangedThereIsAConflict() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			JoinPlan plan = plan(shop, file(GUARD, PUMP), file(GUARD), file(GUARD, NEEDED));
			Conflict conflict = plan.conflicts().get(0);
			assertEquals(Optional.empty(), conflict.ours());
			assertEquals(file(GUARD), joined(shop, plan.decided(shop.editions().repo(), conflict, Optional.empty())));
		}
	}

	@Test
	void aSettingRemovedHereAndChangedThereCanComeBack() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			JoinPlan plan = plan(shop, file(GUARD, PUMP), file(GUARD), file(GUARD, NEEDED));
			assertEquals(file(GUARD, NEEDED), joined(shop, plan.decided(shop.editions().repo(), plan.conflicts().get(0), plan.conflicts().get(0).theirs())));
		}
	}

	@Test
	void whatBothAddAlikeStandsOnce() throws IOException, NotDone {
		assertEquals(file(GUARD, SIREN, LAMP), joined(file(GUARD), file(GUARD, SIREN, LAMP), file(GUARD, SIREN)));
	}

	@Test
	void whatBothAddInOtherWaysIsAConflict() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			JoinPlan plan = plan(shop, file(GUARD), file(GUARD, PUMP), file(GUARD, NEEDED));
			assertEquals(List.of("setting pump exercise"), plan.conflicts().stream().map(Conflict::what).toList());
			assertEquals(Optional.empty(), plan.conflicts().get(0).base());
			assertEquals(file(GUARD, PUMP), joined(shop, plan.decided(shop.editions().repo(), plan.conflicts().get(0), plan.conflicts().get(0).ours())));
		}
	}

	@Test
	void mannersOfWritingThatDoNotGoTogetherAreDecidedAsAWhole() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			String braces = "settings: [ { setting: lamp, values: yes or no, meaning: Shines. } ]\n";
			JoinPlan bySetting = plan(shop, file(PUMP), file(NEEDED), braces);
			assertEquals(List.of("setting pump exercise"), bySetting.conflicts().stream().map(Conflict::what).toList());
			JoinPlan plan = bySetting.decided(shop.editions().repo(), bySetting.conflicts().get(0), bySetting.conflicts().get(0).ours());
			assertEquals(List.of("settings.yaml"), plan.conflicts().stream().map(Conflict::what).toList());
			assertEquals(braces, joined(shop, plan.decided(shop.editions().repo(), plan.conflicts().get(0), plan.conflicts().get(0).theirs())));
		}
	}

	@Test
	void aFileWithErrorsIsDecidedAsAWhole() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			JoinPlan plan = plan(shop, file(PUMP), file(PUMP, GUARD), file(PUMP.replace("values", "valeus")));
			assertEquals(List.of("settings.yaml"), plan.conflicts().stream().map(Conflict::what).toList());
		}
	}
}
