package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.editions.compare.Aspect;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.compare.SideBySide;
import org.setwright.editions.compare.Suggestion;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.lineage.Answer;

/** What changed between editions, rule by rule; who answers for a rule; and bringing rules back. */
class ComparingTest {
	private static final String PUMP = "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )";
	private static final String A = Shop.rule("A", "shop practice", PUMP, "propose( COOL_STAGES, 1 );");
	private static final String B = Shop.rule("B", "shop practice", "OutdoorUnit( maker == \"Norrvik\" )",
			"propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");
	private static final String TABLE = "outdoor unit maker,=> changeover valve,authority,source,because\n"
			+ "Norrvik,energised in heating,maker's instructions,sheet NV-12,Norrvik powers its valve to heat.\n"
			+ "Larchwick,energised in cooling,maker's instructions,guide 4-B,Larchwick powers its valve to cool.\n";

	@TempDir
	Path folder;

	private static String told(BookChanges changes) {
		return changes.rules().stream().map(c -> c.kind() + " " + c.shown()).collect(Collectors.joining("\n"));
	}

	private String changed(String before, String after) throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", before).keep("Before");
			return told(shop.write("rules/a.drl", after).editions().notKept());
		}
	}

	@Test
	void everyAspectIsTold() throws IOException, NotDone {
		String both = A + "\n" + B;
		assertEquals("CHANGED \"B\": condition changed", changed(both, both.replace("Norrvik", "Larchwick")));
	}

	@Test
	void outcomeAndAuthorityAreTold() throws IOException, NotDone {
		assertEquals("CHANGED \"A\": outcome and authority changed", changed(A, A.replace("STAGES, 1", "STAGES, 2")
				.replace("shop practice", "observed on site")));
	}

	@Test
	void wordingAndLayoutAloneAreTold() throws IOException, NotDone {
		assertEquals("WORDING \"A\": wording changed\nWORDING \"B\": wording changed",
				changed(A + "\n" + B, A.replace("always been so", "worked so far") + "\n" + B.replace("when\n", "when // as the sheet says\n")));
	}

	@Test
	void aRuleKeepsItsIdentityThroughANewNameAndANewFile() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A + "\n" + B).keep("Before");
			shop.write("rules/a.drl", A).write("rules/valve.drl", B.replace("\"B\"", "\"The valve of a Norrvik\"").replace("COOLING", "HEATING"));
			RuleChange change = shop.editions().notKept().rules().get(0);
			assertEquals(Set.of(Aspect.NAME, Aspect.PLACE, Aspect.OUTCOME), change.aspects());
			assertEquals("\"The valve of a Norrvik\": outcome changed; renamed from \"B\"; moved from rules/a.drl", change.shown());
		}
	}

	@Test
	void aRenamedRuleIsNotTakenForANewOneThatGotItsOldName() throws IOException, NotDone {
		String other = Shop.rule("A", "code or safety", "not AuxiliaryHeat( )", "find( COMPRESSOR_ALONE );\n    propose( AUXILIARY_STAGES, 0 );");
		assertEquals("MOVED \"Cooling in one step\": renamed from \"A\"\nADDED \"A\": added",
				changed(A, A.replace("rule \"A\"", "rule \"Cooling in one step\"") + "\n" + other));
	}

	@Test
	void twoRulesWithoutAnythingInCommonAreOneGoneAndOneNew() throws IOException, NotDone {
		String other = Shop.rule("Fan", "code or safety", "not AuxiliaryHeat( )", "find( COMPRESSOR_ALONE );");
		assertEquals("ADDED \"Fan\": added\nREMOVED \"A\": removed", changed(A, other));
	}

	@Test
	void rowsOfATableAreKnownByTheirConditionsWhereverTheyStand() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("tables/makers.csv", TABLE).keep("Before");
			String[] lines = TABLE.split("\n");
			shop.write("tables/makers.csv", lines[0] + "\nTarn,energised in cooling,maker's instructions,page 3,Tarn cools.\n" + lines[2] + "\n"
					+ lines[1].replace("heating", "cooling") + "\n");
			assertEquals("ADDED table makers, row 1: added\nCHANGED table makers, row 3: outcome changed", told(shop.editions().notKept()));
		}
	}

	@Test
	void aFaultyEditionIsComparedAllTheSame() throws IOException, NotDone {
		assertEquals("CHANGED \"A\": outcome changed", changed(A, A.replace("COOL_STAGES", "NO_SUCH").replace("end\n", "")));
	}

	@Test
	void jobsAreTold() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("jobs/one.yaml", Shop.job("One", 1)).write("jobs/two.yaml", Shop.job("Two", 1)).write("jobs/three.yaml", Shop.job("Three", 1))
					.write("jobs/four.yaml", Shop.job("Four", 1)).keep("Before");
			shop.write("jobs/one.yaml", Shop.job("One", 2)).write("jobs/two.yaml", Shop.job("Two", 1) + "expect: { cooling stages: 1 }\n")
					.delete("jobs/three.yaml")
					.write("jobs/third.yaml", Shop.job("Three", 1)).write("jobs/four.yaml", "# checked\n" + Shop.job("Four", 1))
							.write("jobs/five.yaml", Shop.job("Five", 1));
			assertEquals(List.of("Five: added", "Four: words changed", "One: answers changed", "Three: moved from jobs/three.yaml",
					"Two: expectations changed"),
					shop.editions().notKept().jobs().stream().map(j -> j.job().name() + ": " + j.what()).sorted().toList());
		}
	}

	@Test
	void theSuggestedMessageFitsOnALineAndListsEverything() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("Before");
			assertEquals("\"A\": outcome changed", Suggestion.message(shop.write("rules/a.drl", A.replace("1 )", "2 )")).editions().notKept()));
			String message = Suggestion.message(shop.write("rules/a.drl", A.replace("1 )", "2 )") + B).write("book.yaml", "book: New name\n").editions()
					.notKept());
			assertEquals("1 rule changed, 1 rule added, book.yaml changed\n\n- \"A\": outcome changed\n- \"B\": added\n- book.yaml: changed", message);
		}
	}

	@Test
	void aFewRulesThatFaredTheSameAreNamedInTheMessage() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A + B).keep("Before");
			shop.write("rules/a.drl", A.replace("1 )", "2 )") + B.replace("COOLING", "HEATING"));
			assertEquals("\"A\", \"B\": changed\n\n- \"A\": outcome changed\n- \"B\": outcome changed", shop.editions().suggestion());
		}
	}

	@Test
	void textsStandSideBySideWithWhatChangedMarked() {
		SideBySide texts = SideBySide.of("when\n  a\n  b\nthen\n  c\n", "when\n  a\n  x\n  y\nthen\n  c\n");
		assertEquals(List.of("when|when", "  a|  a", "*  b|  x", "*|  y", "then|then", "  c|  c"),
				texts.rows().stream().map(r -> (r.changed() ? "*" : "") + r.left() + "|" + r.right()).toList());
	}

	@Test
	void whoeverLastChangedARuleAnswersForIt() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A + "\n" + B).write("tables/makers.csv", TABLE).keep("First", Shop.TRINE);
			Kept changed = shop.write("rules/a.drl", A.replace("STAGES, 1", "STAGES, 2") + "\n" + B).keep("Two stages\n\nThe new units have two.", Shop.ODD);
			Kept moved = shop.write("rules/a.drl", B).write("rules/cool.drl", A.replace("STAGES, 1", "STAGES, 2").replace("rule \"A\"", "rule \"Cooling\""))
					.keep("In order", Shop.MARIT);
			Kept reworded = shop.write("rules/cool.drl", shop.read("rules/cool.drl").replace("always been so", "worked")).keep("Plainer", Shop.TRINE);
			Answer answer = shop.editions().answerAt("rules/cool.drl", 6).orElseThrow();
			assertEquals("Cooling", answer.rule().name());
			assertEquals(List.of("Plainer: wording changed", "In order: renamed from \"A\"; moved from rules/a.drl", "Two stages: outcome changed",
					"First: added"),
					answer.steps().stream().map(s -> s.edition().title() + ": " + s.change().what()).toList());
			assertEquals(List.of(changed, reworded), List.of(answer.mattered().orElseThrow().edition(), answer.last().orElseThrow().edition()));
			assertEquals("The new units have two.", answer.mattered().orElseThrow().edition().reason());
			assertEquals(Shop.MARIT, moved.by());
			assertTrue(shop.editions().answerAt("rules/cool.drl", 40).isEmpty());
		}
	}

	@Test
	void whatIsNotKeptYetIsToldApart() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			shop.write("rules/a.drl", A.replace("1 )", "2 )") + B);
			List<Answer> answers = shop.editions().answers();
			assertEquals(List.of("outcome changed", "added"), answers.stream().map(a -> a.inHand().orElseThrow().what()).toList());
			assertEquals(List.of(1, 0), answers.stream().map(a -> a.steps().size()).toList());
		}
	}
}
