package org.setwright.workbench.startup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.workbench.desk.TestBook;

class SheetTest {
	private static Sheet sheet(String job, UnitSystem units) {
		return Sheet.of(TestBook.outcome(job), units);
	}

	@Test
	void theChecksStandInOrderUnderTheirHeadings() {
		String text = sheet(TestBook.LARCH_LANE, UnitSystem.IP).text();
		assertTrue(text.startsWith("Checks: 2\n\nBEFORE POWER\n1\tSwitch off"), text);
		assertTrue(text.contains("\nCOOLING\n2\tCall for cooling; the valve is energised in heating.\n\tsee\tThe air is 15 to 22 F° colder.\n"), text);
	}

	@Test
	void graveCautionsComeFirst() {
		String text = sheet(TestBook.MILL_ROAD, UnitSystem.IP).text();
		assertTrue(text.startsWith("Checks: 2\nLICENSED WORK\tFuel gas: only a licensed fitter"), text);
		assertTrue(!text.contains("CHECK AT START-UP"), "those are no stops");
	}

	@Test
	void quantitiesAreShownInTheUnitsChosen() {
		assertTrue(sheet(TestBook.LARCH_LANE, UnitSystem.SI).text().contains("8.3 to 12.2 C° colder"));
		assertTrue(sheet(TestBook.LARCH_LANE, UnitSystem.BOTH).text().contains("15 to 22 F° (8.3 to 12.2 C°) colder"));
	}

	@Test
	void anOffsetLeadsToItsCheckAndAHeadingToNone() {
		Sheet sheet = sheet(TestBook.LARCH_LANE, UnitSystem.IP);
		StartUpCheck check = sheet.at(sheet.text().indexOf("The air is")).orElseThrow();
		assertEquals("Feel the air when it cools", check.saidBy().get(0).name());
		assertEquals(Optional.empty(), sheet.at(sheet.text().indexOf("COOLING")));
	}

	@Test
	void everyMarkLiesWithinTheTextAndNoneOverlaps() {
		Sheet sheet = sheet(TestBook.QUARRY_HILL, UnitSystem.BOTH);
		int end = 0;
		for (Sheet.Mark mark : sheet.marks()) {
			assertTrue(mark.start() >= end && mark.length() > 0, mark.toString());
			end = mark.start() + mark.length();
		}
		assertTrue(end <= sheet.text().length());
	}

	@Test
	void theReasonsNameRuleAuthoritySourceAndAnswers() {
		Sheet sheet = sheet(TestBook.LARCH_LANE, UnitSystem.IP);
		String reasons = CheckReasons.of(sheet.cards().get(1).check());
		assertTrue(reasons.startsWith("\u201cFeel the air when it cools\u201d (shop practice)\nA reversed valve warms the air.\nSource: common practice"), reasons);
		assertTrue(reasons.contains("\u2022 The outdoor unit is an air-source heat pump."), reasons);
	}
}
