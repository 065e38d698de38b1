package org.setwright.workbench.aloud;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.desk.TestBook;

class ReadingTest {
	private static final String ROW = "table changeover-by-maker, row 1";

	@Test
	void aRowOfATableIsReadLikeARule() {
		Reading reading = Reading.of(looking(TestBook.saved(), ROW), Reading.NONE);
		assertEquals(ROW, reading.title());
		assertTrue(reading.text().startsWith("If the outdoor unit's maker is Norrvik, set changeover valve to energised in heating"), reading.text());
		assertEquals("", reading.remark());
	}

	@Test
	void whileTheBookHasErrorsTheLastReadingStaysAndSaysSo() {
		Reading before = Reading.of(looking(TestBook.saved(), ROW), Reading.NONE);
		Evaluation broken = TestBook.typing("rules/half.drl", "rule \"Half");
		Reading reading = Reading.of(looking(broken, ROW), before);
		assertEquals(before.sentences(), reading.sentences());
		assertEquals(Messages.ReadAloudView_lastGood, reading.remark());
	}

	@Test
	void aRuleThatIsGoneIsNotRead() {
		Reading reading = Reading.of(looking(TestBook.saved(), "Never written"), Reading.NONE);
		assertTrue(reading.sentences().isEmpty());
		assertTrue(reading.remark().contains("Never written"), reading.remark());
		assertEquals(Reading.NONE, Reading.of(DeskState.EMPTY, reading));
	}

	private static DeskState looking(Evaluation evaluation, String rule) {
		return new DeskState(Optional.of(TestBook.FOLDER), Optional.of(evaluation), Optional.of(TestBook.saved()), Optional.empty(), Optional.empty(),
				Optional.of(rule));
	}
}
