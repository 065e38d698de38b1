package org.setwright.workbench.reasons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.setwright.picture.Derivation;
import org.setwright.picture.Node;
import org.setwright.picture.Picture;
import org.setwright.picture.TextMeasure;
import org.setwright.workbench.desk.TestBook;

class PictureWalkTest {
	private final PictureWalk setting = new PictureWalk(
			Picture.of(Derivation.of(TestBook.outcome(TestBook.LARCH_LANE, "changeover valve")), TextMeasure.USUAL));

	@Test
	void leftGoesDownToTheJobAndRightBackToTheSetting() {
		PictureWalk walk = setting;
		assertEquals(Node.Sort.SETTING, walk.node().sort());
		walk = walk.left();
		assertEquals(Node.Sort.PROPOSAL, walk.node().sort());
		walk = walk.left();
		assertEquals(Node.Sort.RULE, walk.node().sort());
		walk = walk.left();
		assertEquals(Node.Sort.ANSWER, walk.node().sort());
		assertSame(walk, walk.left(), "nothing is left of the job");
		assertEquals(Node.Sort.SETTING, walk.right().right().right().node().sort());
	}

	@Test
	void everyBoxCanBeReachedWithTheKeyboard() {
		Set<Integer> reached = new HashSet<>();
		reach(setting, reached);
		assertEquals(setting.picture().boxes().size(), reached.size());
	}

	private static void reach(PictureWalk walk, Set<Integer> reached) {
		if (reached.add(walk.picked())) {
			reach(walk.left(), reached);
			reach(walk.right(), reached);
			reach(walk.up(), reached);
			reach(walk.down(), reached);
		}
	}

	@Test
	void aPointPicksTheBoxThatHoldsItAndNothingElse() {
		Picture.Box first = setting.picture().boxes().get(0);
		assertEquals(0, setting.at(first.x() + 1, first.y() + 1).picked());
		assertSame(setting, setting.at(-5, -5));
	}

	@Test
	void whatIsPickedIsSaid() {
		assertTrue(setting.spoken().startsWith("setting changeover valve: energised in heating; rests on: "), setting.spoken());
	}
}
