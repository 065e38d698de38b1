package org.setwright.workbench.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LettersTest {
	@Test
	void numbersComeBySizeAndWordsByLettersWhateverTheirCase() {
		List<String> order = List.of("", "2 met", "10 met", "10.5 met", "Birch 2", "birch 10", "Birch 10 upstairs", "Cedar");
		for (int seed = 0; seed < 20; seed++) {
			List<String> mixed = new ArrayList<>(order);
			Collections.shuffle(mixed, new Random(seed));
			mixed.sort(Letters::compare);
			assertEquals(order, mixed);
		}
	}

	@Test
	void theSameTextIsNeitherBeforeNorAfter() {
		assertEquals(0, Letters.compare("Larch Lane 14", "larch lane 14"));
		assertEquals(0, Letters.compare("", ""));
	}
}
