package org.setwright.workbench.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RememberedTest {
	@Test
	void earlierLinesComeBackOneByOneAndThenWhatHadBeenBegun() {
		Remembered remembered = new Remembered(List.of("one", "two"));
		assertEquals(Optional.of("two"), remembered.earlier("begun"));
		assertEquals(Optional.of("one"), remembered.earlier("two"));
		assertEquals(Optional.empty(), remembered.earlier("one"));
		assertEquals(Optional.of("two"), remembered.later());
		assertEquals(Optional.of("begun"), remembered.later());
		assertEquals(Optional.empty(), remembered.later());
	}

	@Test
	void theSameLineTwiceIsRememberedOnce() {
		Remembered remembered = new Remembered(List.of("one", "one", " "));
		assertEquals(List.of("one"), remembered.all());
		remembered.add("two");
		assertEquals(Optional.of("two"), remembered.earlier(""));
	}

	@Test
	void theOldestAreForgotten() {
		Remembered remembered = new Remembered(IntStream.range(0, Remembered.MOST + 5).mapToObj(Integer::toString).toList());
		assertEquals(Remembered.MOST, remembered.all().size());
		assertEquals("5", remembered.all().get(0));
	}
}
