package org.setwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.desk.TestBook;

class StatusWordsTest {
	@Test
	void saysHowTheBookStands() {
		assertEquals("", StatusWords.of(DeskState.EMPTY));
		assertEquals("10 rules and table rows, 3 jobs. Not as expected: 1.", StatusWords.of(state(TestBook.saved())));
		assertEquals("Mistakes: 1. No job is run until they are mended; see Problems.",
				StatusWords.of(state(TestBook.typing("rules/stages.drl", "rule"))));
	}

	private static DeskState state(Evaluation latest) {
		return new DeskState(Optional.of(TestBook.FOLDER), Optional.of(latest), Optional.empty(), Optional.empty(), Optional.empty());
	}
}
