package org.setwright.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeskStateTest {
	private final DeskState opened = DeskState.EMPTY.reading(TestBook.FOLDER).read(TestBook.saved(), true);

	@Test
	void comparesWithWhatWasBeforeAnythingWasTyped() {
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, "job: Larch Lane 14, upstairs\n");
		DeskState now = opened.looking(Optional.of(TestBook.LARCH_LANE), Optional.empty()).read(typed, false);
		assertSame(TestBook.saved(), now.saved().orElseThrow());
		assertEquals(typed.outcome(TestBook.LARCH_LANE), now.outcome());
		assertEquals(TestBook.saved().outcome(TestBook.LARCH_LANE), now.savedOutcome());
	}

	@Test
	void comparesWithTheNewStateOnceItIsSaved() {
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, "job: Larch Lane 14, upstairs\n");
		assertSame(typed, opened.read(typed, true).saved().orElseThrow());
	}

	@Test
	void anotherBookForgetsTheJob() {
		DeskState looking = opened.looking(Optional.of(TestBook.LARCH_LANE), Optional.of(TestBook.setting("cooling stages")));
		assertEquals(Optional.empty(), looking.reading(TestBook.FOLDER.resolveSibling("other")).job());
	}
}
