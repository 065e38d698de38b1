package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;

/** Going back, for one rule or the whole book, without overwriting work. */
class RestoringTest {
	private static final String PUMP = "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )";
	private static final String A = Shop.rule("A", "shop practice", PUMP, "propose( COOL_STAGES, 1 );");
	private static final String B = Shop.rule("B", "shop practice", PUMP, "propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");
	private static final String TABLE = "outdoor unit maker,=> changeover valve,authority,source\nNorrvik,energised in heating,maker's "
			+ "instructions,sheet NV-12\n"
			+ "Larchwick,energised in cooling,maker's instructions,guide 4-B\n";

	@TempDir
	Path folder;

	@Test
	void aRuleComesBackWhereItIsNowUnderTheNameItHad() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", "// head\n\n" + A + "\n" + B).keep("First");
			String renamed = A.replace("rule \"A\"", "rule \"Cooling\"").replace("STAGES, 1", "STAGES, 2");
			shop.write("rules/a.drl", "// head\n\n" + B).write("rules/c.drl", renamed + "\n// tail\n").keep("Moved");
			shop.write("rules/c.drl", shop.read("rules/c.drl").replace("always", "mostly")).keep("Reworded");
			assertEquals("rules/c.drl", shop.editions().restore(first, "A"));
			assertEquals(A + "\n// tail\n", shop.read("rules/c.drl"));
			assertEquals("// head\n\n" + B, shop.read("rules/a.drl"));
			assertEquals(" M rules/c.drl", shop.git("status", "--porcelain").indent(1).stripTrailing());
		}
	}

	@Test
	void aRuleThatIsGoneComesBackAtTheEndOfItsFile() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A + "\n" + B).keep("First");
			shop.write("rules/a.drl", B.replace("\n", "\r\n")).keep("A is gone");
			shop.editions().restore(first, "A");
			assertEquals((B + "\n" + A).replace("\n", "\r\n"), shop.read("rules/a.drl"));
		}
	}

	@Test
	void aRowComesBackUnlessItsTableChangedItsHeadings() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("tables/makers.csv", TABLE).keep("First");
			shop.write("tables/makers.csv", TABLE.replace("Norrvik,energised in heating", "Norrvik,energised in cooling")).keep("Changed");
			shop.editions().restore(first, "table makers, row 1");
			assertEquals(TABLE, shop.read("tables/makers.csv"));
			shop.write("tables/makers.csv", TABLE.replace("source", "source,because").replace("12\n", "12,x\n").replace("4-B\n", "4-B,y\n")
					.replace("heating", "cooling")).keep("New heading");
			assertEquals("Write the row by hand, or restore the whole book to that edition.",
					assertThrows(NotDone.class, () -> shop.editions().restore(first, "table makers, row 1")).remedy());
		}
	}

	@Test
	void workOnTheRuleThatIsNotKeptIsNotOverwritten() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A + "\n" + B).keep("First");
			shop.write("rules/a.drl", A.replace("1 )", "2 )") + "\n" + B).keep("Two");
			String work = A.replace("1 )", "3 )") + "\n" + B;
			shop.write("rules/a.drl", work);
			assertEquals("Keep it as an edition first, or undo it.", assertThrows(NotDone.class, () -> shop.editions().restore(first, "A")).remedy());
			assertEquals(work, shop.read("rules/a.drl"));
			shop.write("rules/a.drl", A.replace("1 )", "2 )") + "\n" + B.replace("always", "mostly"));
			shop.editions().restore(first, "A");
			assertEquals(A + "\n" + B.replace("always", "mostly"), shop.read("rules/a.drl"), "work on another rule of the file stays");
		}
	}

	@Test
	void anotherRuleWithThatNameIsNotOverwritten() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A).keep("First");
			String other = Shop.rule("A", "code or safety", "not AuxiliaryHeat( )", "find( COMPRESSOR_ALONE );");
			shop.write("rules/a.drl", A.replace("rule \"A\"", "rule \"Cooling\"")).keep("Renamed");
			shop.write("rules/b.drl", other).keep("Another A");
			assertEquals("Another rule is called \"A\" now, in rules/b.drl.", assertThrows(NotDone.class, () -> shop.editions().restore(first, "A")).what());
			assertEquals(other, shop.read("rules/b.drl"));
		}
	}

	@Test
	void theWholeBookGoesBackAndWhatWasKeptSinceIsStillThere() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A).write("jobs/one.yaml", Shop.job("One", 1)).keep("First");
			Kept second = shop.write("rules/a.drl", B).delete("jobs/one.yaml").write("tables/makers.csv", TABLE).keep("Second");
			shop.editions().restore(first);
			assertEquals(first.content(), shop.keep("Back to the first").content());
			assertEquals(3, shop.editions().history().size());
			shop.editions().restore(second);
			assertEquals(second.content(), shop.keep("Forward again").content());
		}
	}

	@Test
	void theWholeBookDoesNotGoBackOverWorkThatIsNotKept() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A).keep("First");
			shop.write("rules/a.drl", B).keep("Second");
			shop.write("jobs/new.yaml", Shop.job("New", 1));
			NotDone refused = assertThrows(NotDone.class, () -> shop.editions().restore(first));
			assertEquals("There is work that is not kept yet, in jobs/new.yaml, and it would be overwritten.", refused.what());
			assertEquals(B, shop.read("rules/a.drl"));
		}
	}
}
