package org.setwright.workbench.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextChangeTest {
	@Test
	void touchesOnlyWhatDiffers() {
		assertEquals(new TextChange(8, 1, "2"), TextChange.between("stages: 1 # plate", "stages: 2 # plate"));
	}

	@ParameterizedTest
	@CsvSource({ "aa,aaa", "aaa,aa", "'',x", "x,''", "abc,abc", "abab,ab", "ab,abab", "one two,two one" })
	void turnsOneTextIntoTheOther(String before, String after) {
		TextChange change = TextChange.between(before, after);
		assertEquals(after, new StringBuilder(before).replace(change.offset(), change.offset() + change.length(), change.replacement()).toString());
	}
}
