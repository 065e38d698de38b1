package org.setwright.workbench.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.graphics.ImageData;
import org.junit.jupiter.api.Test;
import org.setwright.landing.LandingPlan;
import org.setwright.trade.wiring.Wire;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.landing.LandingRow.Mark;
import org.setwright.workbench.landing.LandingRows.Group;
import org.setwright.workbench.look.Icon;

class LandingRowsTest {
	private static final String JOB = """
			job: Larch Lane 14, upstairs
			site power: { voltage: 24 V }
			transformers: [heating and cooling]
			indoor unit: { kind: boiler, fuel: oil, stages: 1 }
			outdoor unit: none
			controller: { power: common conductor, separate supplies: no }
			wires:
			  - { colour: red, at control: R, at equipment: R, gauge: 18 AWG, condition: sound }
			  - { colour: light blue, at control: not landed, condition: sound }
			  - { colour: brown, at control: W2, at equipment: W2, condition: broken }
			not fitted: everything else
			""";

	@Test
	void aConductorThatStaysSaysSoAtBothEndsAndShowsItsColour() {
		LandingRow red = row(JOB, "24 V supply");
		assertEquals(List.of("red 18 AWG", "R", "R", "keep"), List.of(red.conductor(), red.wall(), red.equipment(), red.what()));
		assertEquals(Optional.of(Wire.Colour.RED), red.colour());
		assertEquals(Mark.SETTLED, red.mark());
		assertTrue(red.detail().contains("Source: "), red.detail());
	}

	@Test
	void aConductorToBeTracedIsMarkedAndTheDetailSaysWhatToDoFirst() {
		LandingRow heat = row(JOB, "first step of heat");
		assertEquals("spare \u2192 W", heat.wall());
		assertEquals("new, after checking", heat.what());
		assertEquals(Mark.SETTLED_SO_FAR, heat.mark());
		assertTrue(heat.detail().contains("First: Trace it to its other end"), heat.detail());
	}

	@Test
	void whatHasNoConductorListsItsRemediesInOrder() {
		LandingRow common = row(JOB, "common");
		assertEquals(Mark.GAP, common.mark());
		assertTrue(common.detail().indexOf("1. Pull a new cable") < common.detail().indexOf("2. Feed the controller from a plug-in"), common.detail());
	}

	@Test
	void aBrokenConductorIsListedAsNotLanded() {
		Group unused = groups(JOB).stream().filter(g -> g.heading().equals("Not landed")).findFirst().orElseThrow();
		assertEquals("brown", unused.rows().get(0).conductor());
		assertTrue(unused.rows().get(0).what().startsWith("Isolate both its ends"));
	}

	@Test
	void aHardStopLeavesNothingButItselfAndTheCautions() {
		List<Group> stopped = groups(JOB.replace("voltage: 24 V", "voltage: line voltage"));
		assertEquals(List.of("First clear this", "To heed"), stopped.stream().map(Group::heading).toList());
		assertEquals("No conductor may be landed yet", LandingView.counts(plan(JOB.replace("voltage: 24 V", "voltage: line voltage"))));
	}

	/** Without a conductor are the common, and perhaps a second step of heat, to which the brown one on W2 points. */
	@Test
	void theSummaryCounts() {
		assertEquals("2 to land, 1 of them after checking; 2 without a conductor; 1 not landed", LandingView.counts(plan(JOB)));
	}

	@Test
	void everyKindOfCautionHasASignOfItsOwn() {
		List<Mark> marks = groups(JOB).stream().filter(g -> g.heading().equals("To heed")).flatMap(g -> g.rows().stream()).map(LandingRow::mark).toList();
		assertEquals(List.of(Mark.DANGER, Mark.LICENSED_WORK, Mark.CHECK_AT_START_UP, Mark.NOTE), marks);
	}

	@Test
	void everyMarkHasASign() {
		for (Mark mark : Mark.values()) {
			assertEquals(mark.name(), Icon.of(mark).name());
		}
	}

	@Test
	void aSwatchHasABorderSoThatWhiteAndBlackShowOnAnyGround() {
		ImageData white = Swatch.drawn(0xffffff, 16);
		assertEquals(0, white.getAlpha(0, 0), "transparent around it");
		assertFalse(white.getPixel(3, 3) == white.getPixel(8, 8), "its border differs from its filling");
	}

	private static LandingRow row(String text, String duty) {
		return groups(text).stream().flatMap(g -> g.rows().stream()).filter(r -> r.duty().equals(duty)).findFirst().orElseThrow();
	}

	private static List<Group> groups(String text) {
		return LandingRows.of(plan(text));
	}

	private static LandingPlan plan(String text) {
		return LandingPlan.of(TestBook.typing(TestBook.LARCH_LANE, text).outcome(TestBook.LARCH_LANE).orElseThrow());
	}
}
