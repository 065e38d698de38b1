package org.setwright.workbench.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.engine.Compilation;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.desk.TestBook;

class HeadlineTest {
	@Test
	void countsTheSettingsByState() {
		assertTrue(Headline.counts(TestBook.outcome(TestBook.LARCH_LANE)).startsWith("4 settled"));
	}

	@Test
	void saysWhyThereIsNothingToShow() {
		assertEquals("No rule book is open. Open one from the File menu.", Headline.why(DeskState.EMPTY));
		Problem problem = Problem.error(new Position("rules/a.drl", 1, 1), "Wrong.", "Mend it.");
		Evaluation faulty = new Evaluation(TestBook.saved().book(), new Compilation(Optional.empty(), List.of(problem)),
				List.of(problem), Map.of());
		DeskState state = new DeskState(Optional.of(TestBook.FOLDER), Optional.of(faulty), Optional.empty(), Optional.empty(),
				Optional.empty());
		assertEquals("The rules cannot run. Mistakes: 1. See Problems.", Headline.why(state));
	}

	@Test
	void whatAJobCameToStaysWhileTheRulesCannotRunAndIsSaidToBeFromBefore() {
		Evaluation good = TestBook.saved();
		Evaluation faulty = new Evaluation(good.book(), new Compilation(Optional.empty(), List.of()),
				List.of(Problem.error(new Position("rules/a.drl", 1, 1), "Wrong.", "Mend it.")), Map.of());
		DeskState before = new DeskState(Optional.of(TestBook.FOLDER), Optional.of(good), Optional.of(good), Optional.of(TestBook.LARCH_LANE), Optional.empty());
		DeskState now = new DeskState(Optional.of(TestBook.FOLDER), Optional.of(faulty), Optional.of(good), Optional.of(TestBook.LARCH_LANE), Optional.empty());
		assertTrue(Headline.said(before).startsWith("4 settled"), Headline.said(before));
		assertTrue(Headline.said(now).startsWith("FROM BEFORE: 4 settled"), Headline.said(now));
		assertEquals(before.outcome(), now.lastOutcome());
		assertEquals(Optional.empty(), now.outcome());
	}
}
