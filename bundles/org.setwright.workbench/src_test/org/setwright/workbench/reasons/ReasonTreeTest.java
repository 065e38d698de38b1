package org.setwright.workbench.reasons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.reasons.ReasonNode.InJob;
import org.setwright.workbench.reasons.ReasonNode.InRules;
import org.setwright.workbench.reasons.ReasonNode.Sign;

class ReasonTreeTest {

	@Test
	void theStrongestProposalStandsFirstAndLeadsToItsRow() {
		ReasonNode root = tree(TestBook.LARCH_LANE, "changeover valve");
		assertEquals("changeover valve: energised in heating", root.text());
		ReasonNode deciding = root.children().get(0);
		assertEquals("table changeover-by-maker, row 1: energised in heating", deciding.text());
		assertEquals("maker's instructions", deciding.remark());
		assertTrue(deciding.detail().startsWith("If the outdoor unit's maker is Norrvik, set changeover valve to energised in heating "
				+ "(maker's instructions). The reason: Norrvik powers the valve to heat. Source: sheet NV-12.\nAuthority: "), deciding.detail());
		assertEquals("tables/changeover-by-maker.csv", ((InRules) deciding.place().orElseThrow()).at().file());
	}

	@Test
	void whatIsOutrankedStaysVisible() {
		ReasonNode root = tree(TestBook.LARCH_LANE, "changeover valve");
		ReasonNode outranked = root.children().get(1);
		assertEquals(Sign.OUTRANKED, outranked.sign());
		assertTrue(outranked.text().startsWith("Maker not looked up: take cooling, and check"), outranked.text());
	}

	@Test
	void conditionsLeadToTheAnswersOfTheJob() {
		ReasonNode root = tree(TestBook.LARCH_LANE, "changeover valve");
		ReasonNode maker = leaves(root.children().get(0)).filter(n -> n.text().equals("outdoor unit: maker: Norrvik")).findFirst()
				.orElseThrow();
		assertEquals(Sign.FACT, maker.sign());
		assertEquals("maker", ((InJob) maker.place().orElseThrow()).field().field().orElseThrow().name());
	}

	@Test
	void aFindingLeadsToTheRulesThatMadeIt() {
		ReasonNode root = tree(TestBook.MILL_ROAD, "compressor with auxiliary heat");
		ReasonNode finding = all(root).filter(n -> n.sign() == Sign.FINDING).findFirst().orElseThrow();
		assertEquals("Furnace beside a heat pump", finding.children().get(0).text());
		assertTrue(leaves(finding).anyMatch(n -> n.text().equals("auxiliary heat: kind: furnace")));
	}

	@Test
	void whatHoldsARuleOpenIsNamed() {
		ReasonNode root = tree(TestBook.QUARRY_HILL, "changeover valve");
		ReasonNode held = all(root).filter(n -> n.sign() == Sign.HELD_OPEN).findFirst().orElseThrow();
		assertEquals("outdoor unit: maker", held.children().get(0).text());
		assertEquals(Sign.UNKNOWN, held.children().get(0).sign());
	}

	@Test
	void aGapSaysThatNothingIsEntered() {
		ReasonNode root = tree(TestBook.LARCH_LANE, "schedule");
		assertEquals(Sign.GAP, root.sign());
		assertEquals("schedule: no rule proposes a value", root.text());
		assertTrue(root.detail().contains("nothing is entered"), root.detail());
	}

	@Test
	void everySettingOfEveryJobHasReasonsAndEveryRuleAPlace() {
		TestBook.saved().outcomes().values().forEach(o -> o.settings().forEach(s -> {
			ReasonNode root = ReasonTree.of(s);
			assertEquals(s.proposals().size() + s.heldOpen().size(), root.children().size(), root.text());
			assertTrue(root.children().stream().map(ReasonNode::place).allMatch(Optional::isPresent), root.text());
		}));
	}

	@Test
	void whatIsNotThereSaysThatSomebodyMadeSure() {
		ReasonNode root = tree(TestBook.LARCH_LANE, "auxiliary heat stages");
		JobField anyAuxiliaryHeat = JobField.presence(Trade.catalogue().kind("AuxiliaryHeat").orElseThrow());
		assertTrue(leaves(root).anyMatch(n -> n.text().equals(anyAuxiliaryHeat.label() + ": none")), root.toString());
	}

	private static ReasonNode tree(String job, String setting) {
		return ReasonTree.of(TestBook.outcome(job, setting));
	}

	private static Stream<ReasonNode> all(ReasonNode node) {
		return Stream.concat(Stream.of(node), node.children().stream().flatMap(ReasonTreeTest::all));
	}

	private static Stream<ReasonNode> leaves(ReasonNode node) {
		return all(node).filter(n -> n.children().isEmpty());
	}
}
