package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words that cannot be followed get a sentence and an exit code, and print no answer. */
class WrongUsageTest {
	@TempDir
	Path folder;

	@ParameterizedTest(name = "\"{0}\" ends with {1}: {2}")
	@CsvSource(delimiter = '|', textBlock = """
			''                        | 2 | Say what to show
			setp                      | 2 | setup
			jobs --as yaml            | 2 | yaml
			jobs --colour             | 2 | --colour
			setup                     | 2 | Name one job
			setup larch --all         | 2 | Name one job
			why                       | 2 | JOB
			words perpetual_motion    | 2 | perpetual_motion
			editions --rule a --file b | 3 | no rule book here
			jobs                      | 3 | no rule book here
			jobs --book nowhere       | 3 | no folder
			""")
	void isToldInASentence(String words, int exit, String sentence) {
		Typed typed = Typed.in(folder).type(words.isEmpty() ? new String[0] : words.split(" "));
		assertEquals(exit, typed.exit(), typed.err());
		assertTrue(typed.err().contains(sentence), typed.err());
		assertEquals("", typed.out());
		assertFalse(typed.err().contains("Exception"), typed.err());
	}
}
