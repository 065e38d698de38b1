package org.setwright.workbench.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class TextSpanTest {
	private static final String TEXT = "rule \"a\"\r\n  OutdoorUnit( kind == X )\nend";

	@Test
	void coversTheWordThatBeginsThere() {
		assertEquals("OutdoorUnit", covered(2, 3));
	}

	@Test
	void coversTheRestOfTheLineWhenNoWordBeginsThere() {
		assertEquals("( kind == X )", covered(2, 14));
	}

	@Test
	void coversTheLineWithoutItsIndentWhenTheWholeLineIsMeant() {
		assertEquals("OutdoorUnit( kind == X )", covered(2, 0));
		assertEquals("rule \"a\"", covered(1, 0));
		assertEquals("end", covered(3, 1));
	}

	@Test
	void aLineThatIsNotThereCoversNothing() {
		assertEquals(Optional.empty(), TextSpan.of(TEXT, 4, 1));
		assertEquals(Optional.empty(), TextSpan.of(TEXT, 0, 0));
	}

	@Test
	void aColumnBehindTheLineEndsAtTheLine() {
		assertEquals("", covered(3, 99));
	}

	private static String covered(int line, int column) {
		TextSpan span = TextSpan.of(TEXT, line, column).orElseThrow();
		return TEXT.substring(span.start(), span.end());
	}
}
