package org.setwright.workbench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class JobTextColoursTest {
	@Test
	void tellsNamesFromValuesAndComments() {
		String text = "# Tuesday\nindoor unit: { kind: air handler, maker: \"A: B # C\" } # seen\n";
		assertEquals(List.of("# Tuesday", "indoor unit:", "kind:", "maker:", "\"A: B # C\"", "# seen"),
				coloured(text));
	}

	@Test
	void anApostropheWithinAWordBeginsNothing() {
		assertEquals(List.of("notes:", "job:", "'it''s'"), coloured("notes: the maker's sheet\njob: 'it''s'"));
	}

	@Test
	void evenAVeryLongQuotedTextIsColoured() {
		String text = "'" + "long ".repeat(20_000) + "'";
		assertEquals(List.of(text), coloured(text));
	}

	private static List<String> coloured(String text) {
		return JobTextColours.in(text).stream().map(s -> text.substring(s.start(), s.start() + s.length()).strip()).toList();
	}
}
