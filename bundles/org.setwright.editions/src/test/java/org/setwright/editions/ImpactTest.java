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
import org.setwright.editions.impact.Telling;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.since.Since;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Setting;

/** Which job gets which different settings, by which change, and since when. */
class ImpactTest {
	private static final String PUMP = "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )";
	private static final String ONE = Shop.rule("One stage", "shop practice", PUMP, "propose( COOL_STAGES, 1 );");
	private static final String FIND = Shop.rule("Finds it", "shop practice", "OutdoorUnit( stages == 2 )", "find( TWO_STAGES );");
	private static final String TWO = Shop.rule("Two stages", "observed on site", "Finding( name == TWO_STAGES )", "propose( COOL_STAGES, 2 );");

	@TempDir
	Path folder;

	private Impact impact(Shop shop) throws NotDone {
		return shop.editions().impact(shop.editions().notKept(), Progress.UNWATCHED).orElseThrow();
	}

	private static List<String> told(Impact impact) {
		return impact.jobs().stream().flatMap(j -> j.differences().stream().filter(d -> d.point().kind() != Telling.Kind.START_UP)
				.map(d -> j.job().name() + ": " + d.point().words() + " " + d.before() + " -> " + d.after() + " by "
						+ String.join(" or ", d.causes().stream().map(c -> c.shown()).toList()))).toList();
	}

	private Shop shop() throws IOException, NotDone {
		return Shop.in(folder).write("jobs/small.yaml", Shop.job("Small", 1)).write("jobs/large.yaml", Shop.job("Large", 2));
	}

	@Test
	void oneChangeAmongSeveralIsNamed() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND).keep("First");
			shop.write("rules/a.drl", ONE.replace("always", "mostly") + FIND + TWO
					+ Shop.rule("Warn", "shop practice", "OutdoorUnit( stages == 1 )", "caution( NOTE, \"Only one stage.\" );"));
			assertEquals(List.of("Large: cooling stages 1 -> 2 by \"Two stages\": added",
					"Small: note: Only one stage. absent -> raised by \"Warn\": added"), told(impact(shop)));
			assertEquals(2, impact(shop).run());
		}
	}

	@Test
	void twoChangesThatOnlyTogetherDoItAreNamedTogether() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND.replace("stages == 2", "stages == 2, maker == \"Larchwick\"")
					+ TWO.replace("observed on site", "factory default")).keep("First");
			shop.write("rules/a.drl", ONE + FIND + TWO + Shop.rule("Unrelated", "shop practice", "AuxiliaryHeat( )", "propose( AUXILIARY_STAGES, 1 );"));
			assertEquals(List.of("Large: cooling stages 1 -> 2 by \"Finds it\": condition changed together with \"Two stages\": authority changed"),
					told(impact(shop)));
		}
	}

	@Test
	void twoChangesThatEachDoItAreNamedAsSuch() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE).keep("First");
			shop.write("rules/a.drl", ONE + Shop.rule("X", "observed on site", "OutdoorUnit( stages == 2 )", "propose( COOL_STAGES, 2 );")
					+ Shop.rule("Y", "code or safety", "OutdoorUnit( stages == 2 )", "propose( COOL_STAGES, 2 );"));
			assertEquals(List.of("Large: cooling stages 1 -> 2 by \"X\": added or \"Y\": added"), told(impact(shop)));
		}
	}

	@Test
	void theJobsOwnAnswersCanBeResponsible() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND + TWO).keep("First");
			shop.write("jobs/small.yaml", Shop.job("Small", 2)).write("rules/a.drl", ONE.replace("always", "mostly") + FIND + TWO);
			assertEquals(List.of("Small: cooling stages 1 -> 2 by the job's own answers changed",
					"Small: second-stage difference not needed -> gap by the job's own answers changed"), told(impact(shop)));
		}
	}

	@Test
	void disputesGapsAndRowsAreTold() throws IOException, NotDone {
		try (Shop shop = shop()) {
			String table = "outdoor unit stages,=> cooling stages,authority,source\n2,2,shop practice,x\n1,1,shop practice,x\n";
			shop.write("tables/stages.csv", table).keep("First");
			shop.write("tables/stages.csv", table.replace("1,1,", "1,2,")).write("rules/b.drl",
					Shop.rule("One", "shop practice", "OutdoorUnit( stages == 2 )", "propose( COOL_STAGES, 1 );"));
			assertEquals(List.of("Large: cooling stages 2 -> dispute: 1 or 2 by \"One\": added",
					"Small: cooling stages 1 -> 2 by table stages, row 2: outcome changed"), told(impact(shop)));
			shop.delete("tables/stages.csv").delete("rules/b.drl");
			assertEquals(List.of("Large: cooling stages 2 -> gap by table stages, row 1: removed",
					"Small: cooling stages 1 -> gap by table stages, row 2: removed"), told(impact(shop)));
		}
	}

	@Test
	void wordingMovesAndNamesMeanNothingForAnyJob() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND + TWO).keep("First");
			shop.write("rules/a.drl", FIND + TWO.replace("always", "mostly")).write("rules/b.drl", ONE.replace("rule \"One stage\"", "rule \"Single\""));
			assertEquals(List.of(), impact(shop).jobs());
		}
	}

	@Test
	void aBookWithErrorsIsSaidToHaveThem() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE).keep("First");
			Impact impact = impact(shop.write("rules/a.drl", ONE.replace("COOL_STAGES", "COOL_STAGE")));
			assertTrue(impact.fault().startsWith("No job could be run, because the work in hand has errors: rules/a.drl:"), impact.fault());
		}
	}

	@Test
	void beforeTheFirstEditionNoJobCameToAnything() throws IOException, NotDone {
		try (Shop shop = shop()) {
			Impact impact = impact(shop.write("rules/a.drl", ONE));
			assertEquals("No edition stands before it, so there is nothing that jobs came to before.", impact.fault());
			assertEquals("nothing", impact.changes().before().shown());
			assertEquals("the work in hand", impact.changes().after().shown());
			Kept first = shop.keep("First");
			BookChanges fromNothing = shop.editions().changes(BookAt.NOTHING, shop.editions().at(first));
			assertEquals(impact.fault(), shop.editions().impact(fromNothing, Progress.UNWATCHED).orElseThrow().fault());
			shop.write("rules/a.drl", ONE.replace("always", "mostly"));
			assertEquals("", impact(shop).fault());
		}
	}

	private static Since since(Shop shop, String job, String setting) throws NotDone {
		JobCase found = shop.editions().shelf().job(shop.editions().inHand(), "jobs/" + job + ".yaml").job();
		Setting asked = Trade.catalogue().settings().stream().filter(s -> s.label().equals(setting)).findFirst().orElseThrow();
		return shop.editions().since(found, asked);
	}

	@Test
	void aValueThatCameAndWentIsSinceItsLastComing() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND + TWO).keep("Two at first");
			shop.write("rules/a.drl", ONE + FIND).keep("Not any more");
			Kept back = shop.write("rules/a.drl", ONE + FIND + TWO.replace("observed on site", "code or safety")).write("rules/x.drl", "// nothing\n")
					.keep("Again");
			shop.write("rules/a.drl", ONE.replace("always", "mostly") + FIND + TWO.replace("observed on site", "code or safety")).keep("Reworded");
			Since since = since(shop, "large", "cooling stages");
			assertEquals("2", since.value());
			assertEquals(List.of(back), since.origins().stream().map(o -> o.edition()).toList());
			assertEquals("1 by \"Two stages\": added", since.origins().get(0).valueBefore() + " by " + since.origins().get(0).causes().get(0).shown());
			assertEquals(Optional.empty(), since(shop, "small", "cooling stages").origins().get(0).before());
		}
	}

	@Test
	void editionsWithErrorsArePassedOver() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND).keep("One");
			Kept broken = shop.write("rules/a.drl", ONE + FIND + TWO.replace("propose", "prpose")).keep("Broken");
			Kept mended = shop.write("rules/a.drl", ONE + FIND + TWO).keep("Mended");
			Since since = since(shop, "large", "cooling stages");
			assertEquals(List.of(List.of(mended), List.of(broken)), List.of(since.origins().stream().map(o -> o.edition()).toList(), since.passedOver()));
			assertEquals("\"Two stages\": added", since.origins().get(0).causes().get(0).shown());
		}
	}

	@Test
	void aValueIsFoundOnTheLineThatBroughtIt() throws IOException, NotDone {
		try (Shop shop = shop()) {
			shop.write("rules/a.drl", ONE + FIND).keep("One");
			shop.editions().lines().begin("trial");
			Kept there = shop.write("rules/a.drl", ONE + FIND + TWO).keep("Tried two");
			shop.git("checkout", "-q", "-");
			shop.write("rules/b.drl", Shop.rule("Heat", "shop practice", "AuxiliaryHeat( )", "propose( AUXILIARY_STAGES, 1 );")).keep("Meanwhile");
			shop.editions().lines().keepJoined(shop.editions().lines().join("trial"), "Joined", Optional.empty());
			assertEquals(List.of(there), since(shop, "large", "cooling stages").origins().stream().map(o -> o.edition()).toList());
		}
	}
}
