package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;

/** Trials on a line of their own, and joining lines rule by rule. */
class JoiningTest {
	private static final String PUMP = "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )";
	private static final String A = Shop.rule("A", "shop practice", PUMP, "propose( COOL_STAGES, 1 );");
	private static final String B = Shop.rule("B", "shop practice", PUMP, "propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");
	private static final String C = Shop.rule("C", "shop practice", "not AuxiliaryHeat( )", "propose( AUXILIARY_STAGES, 0 );");
	private static final String D = Shop.rule("D", "shop practice", "AuxiliaryHeat( )", "propose( AUXILIARY_STAGES, 1 );");
	private static final String TABLE = "outdoor unit maker,=> changeover valve,authority,source\nNorrvik,energised in heating,maker's "
			+ "instructions,sheet NV-12\n";

	@TempDir
	Path folder;

	private static void trial(Shop shop, String path, String here, String there) throws IOException, NotDone {
		shop.editions().lines().begin("trial");
		shop.write(path, there).keep("On trial", Shop.ODD);
		shop.editions().lines().open(shop.git("branch", "--list", "--format=%(refname:short)").replace("trial", "").strip());
		shop.write(path, here).keep("In force", Shop.TRINE);
	}

	private static Kept join(Shop shop, JoinPlan plan) throws NotDone {
		return shop.editions().lines().keepJoined(plan, "Joined the trial", Optional.of(Shop.MARIT));
	}

	@Test
	void bothAddARuleAtTheEndOfAFile() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			trial(shop, "rules/a.drl", A + "\n" + B, A + "\n" + C);
			JoinPlan plan = shop.editions().lines().join("trial");
			assertEquals(List.of(), plan.conflicts());
			Kept joined = join(shop, plan);
			assertEquals(A + "\n" + B + "\n" + C, shop.read("rules/a.drl"));
			assertEquals(2, joined.parents().size());
			assertEquals("", shop.git("status", "--porcelain"));
			assertEquals("Joined the trial|2", shop.git("log", "-1", "--format=%s|") + shop.git("log", "-1", "--format=%P").split(" ").length);
			shop.git("fsck", "--strict");
		}
	}

	@Test
	void aChangeARemovalAndAnAdditionOfTheOtherLineAllComeIn() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", "// practice\n\n" + A + "\n" + B + "\n" + C).keep("First");
			trial(shop, "rules/a.drl", "// practice\n\n" + A.replace("1 )", "2 )") + "\n" + B + "\n" + C, "// our practice\n\n" + A + "\n" + D + "\n"
					+ C.replace("0 )", "1 )"));
			join(shop, shop.editions().lines().join("trial"));
			assertEquals("// our practice\n\n" + A.replace("1 )", "2 )") + "\n" + D + "\n" + C.replace("0 )", "1 )"), shop.read("rules/a.drl"));
		}
	}

	@Test
	void aRuleThatBothChangedIsAConflictAlsoWhereTheLinesDoNotTouch() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A + "\n" + B).keep("First");
			String ours = A.replace("== AIR_SOURCE_HEAT_PUMP", "in ( AIR_SOURCE_HEAT_PUMP, GROUND_SOURCE_HEAT_PUMP )") + "\n" + B;
			String theirs = A.replace("STAGES, 1", "STAGES, 2") + "\n" + B;
			trial(shop, "rules/a.drl", ours, theirs);
			JoinPlan plan = shop.editions().lines().join("trial");
			Conflict conflict = plan.conflicts().get(0);
			assertEquals("\"A\"", conflict.what());
			assertEquals(List.of(A.strip(), true, true), List.of(conflict.base().orElseThrow(), conflict.ours().orElseThrow().contains("GROUND"),
					conflict.theirs().orElseThrow().contains("STAGES, 2")));
			assertEquals("Decide which of the two holds, then join.", assertThrows(NotDone.class, () -> join(shop, plan)).remedy());
			assertEquals(ours, shop.read("rules/a.drl"));
			join(shop, plan.decided(shop.editions().repo(), conflict, conflict.theirs()));
			assertEquals(theirs, shop.read("rules/a.drl"));
		}
	}

	@Test
	void aRuleRemovedHereAndChangedThereIsAConflict() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A + "\n" + B).keep("First");
			trial(shop, "rules/a.drl", A, A + "\n" + B.replace("COOLING", "HEATING"));
			JoinPlan plan = shop.editions().lines().join("trial");
			assertEquals(Optional.empty(), plan.conflicts().get(0).ours());
			JoinPlan gone = plan.decided(shop.editions().repo(), plan.conflicts().get(0), Optional.empty());
			join(shop, gone);
			assertEquals(A, shop.read("rules/a.drl"));
		}
	}

	@Test
	void rowsAreJoinedOneByOne() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("tables/makers.csv", TABLE).keep("First");
			trial(shop, "tables/makers.csv", TABLE + "Larchwick,energised in cooling,maker's instructions,guide 4-B\nTarn,energised in cooling,shop "
					+ "practice,x\n",
					TABLE.replace("heating", "cooling") + "Tarn,energised in heating,shop practice,x\n");
			JoinPlan plan = shop.editions().lines().join("trial");
			assertEquals(List.of("table makers, row 3"), plan.conflicts().stream().map(Conflict::what).toList());
			join(shop, plan.decided(shop.editions().repo(), plan.conflicts().get(0), plan.conflicts().get(0).ours()));
			assertEquals(TABLE.replace("heating", "cooling")
					+ "Larchwick,energised in cooling,maker's instructions,guide 4-B\nTarn,energised in cooling,shop practice,x\n",
					shop.read("tables/makers.csv"));
		}
	}

	@Test
	void aJobThatBothChangedInTheSameLineIsAConflictOfTheFile() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("jobs/one.yaml", Shop.job("One", 1)).keep("First");
			trial(shop, "jobs/one.yaml", Shop.job("One", 2), Shop.job("One, upstairs", 1).replace("stages: 1", "stages: 3"));
			JoinPlan plan = shop.editions().lines().join("trial");
			assertEquals(List.of("jobs/one.yaml"), plan.conflicts().stream().map(Conflict::what).toList());
			join(shop, plan.decided(shop.editions().repo(), plan.conflicts().get(0), plan.conflicts().get(0).theirs()));
			assertTrue(shop.read("jobs/one.yaml").contains("stages: 3"));
		}
	}

	@Test
	void aRuleThatWouldStandTwiceIsRefused() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A + "\n" + B).keep("First");
			shop.editions().lines().begin("trial");
			shop.write("rules/a.drl", A).write("rules/b.drl", B).keep("B in its own file");
			shop.git("checkout", "-q", "-");
			shop.write("rules/a.drl", A).write("rules/c.drl", B).keep("B in another");
			assertEquals("Joined, the rule \"B\" would stand twice, in rules/b.drl and rules/c.drl.",
					assertThrows(NotDone.class, () -> shop.editions().lines().join("trial")).what());
		}
	}

	@Test
	void aLineWithNothingElseSimplyGoesOn() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			shop.editions().lines().begin("trial");
			Kept there = shop.write("rules/a.drl", B).keep("Second");
			shop.git("checkout", "-q", "-");
			JoinPlan plan = shop.editions().lines().join("trial");
			assertEquals(there, join(shop, plan));
			assertEquals(B, shop.read("rules/a.drl"));
			assertEquals("There is nothing to join.", assertThrows(NotDone.class, () -> join(shop, shop.editions().lines().join("trial"))).remedy());
		}
	}

	@Test
	void linesThatHaveCrossedBeforeAskRatherThanGuess() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			trial(shop, "rules/a.drl", A + "\n" + B, A + "\n" + C);
			String main = shop.editions().repo().line().orElseThrow();
			String before = shop.git("rev-parse", "HEAD");
			join(shop, shop.editions().lines().join("trial"));
			shop.write("rules/a.drl", shop.read("rules/a.drl").replace("STAGES, 1", "STAGES, 2")).keep("Two");
			shop.editions().lines().open("trial");
			join(shop, shop.editions().lines().join(before));
			shop.write("rules/a.drl", shop.read("rules/a.drl").replace("COOLING", "HEATING")).keep("Heating");
			JoinPlan plan = shop.editions().lines().join(main);
			assertEquals(2, plan.joining().bases().size());
			assertEquals(List.of("rules/a.drl"), plan.conflicts().stream().map(Conflict::what).toList());
			assertThrows(NotDone.class, () -> join(shop, plan));
		}
	}

	@Test
	void workThatIsNotKeptIsNeverOverwrittenByJoiningOrGoingOver() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			trial(shop, "rules/a.drl", A + "\n" + B, A + "\n" + C);
			shop.write("rules/a.drl", A + "\n" + D);
			assertTrue(assertThrows(NotDone.class, () -> join(shop, shop.editions().lines().join("trial"))).what().contains("rules/a.drl"));
			assertTrue(assertThrows(NotDone.class, () -> shop.editions().lines().open("trial")).what().contains("rules/a.drl"));
			assertEquals(A + "\n" + D, shop.read("rules/a.drl"));
			shop.write("rules/a.drl", A + "\n" + B);
			shop.editions().lines().open("trial");
			shop.write("rules/new.drl", D).keep("New file");
			shop.editions().lines().open(shop.editions().lines().all().stream().filter(l -> !l.name().equals("trial")).findFirst().orElseThrow().name());
			shop.write("rules/new.drl", "// mine\n");
			assertTrue(assertThrows(NotDone.class, () -> shop.editions().lines().open("trial")).what().contains("rules/new.drl"));
			assertEquals("// mine\n", shop.read("rules/new.drl"));
		}
	}

	@Test
	void workInHandComesAlongToANewLine() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			shop.write("rules/a.drl", B);
			shop.editions().lines().begin("trial");
			assertEquals(B, shop.read("rules/a.drl"));
			assertEquals("Write for example a_b.", assertThrows(NotDone.class, () -> shop.editions().lines().begin("a b")).remedy());
			assertThrows(NotDone.class, () -> shop.editions().lines().begin("trial"));
			assertThrows(NotDone.class, () -> shop.editions().lines().open("nowhere"));
		}
	}
}
