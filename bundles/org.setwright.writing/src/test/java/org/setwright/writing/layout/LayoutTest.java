package org.setwright.writing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.setwright.writing.text.TextEdit;

class LayoutTest {
	private static final String TIDY = """
			// The valve.

			rule "a"
			    @authority( shop practice )
			    @because( "x" )
			when
			    $u : OutdoorUnit( kind in ( A, B ), stages >= 2 )   // two
			    not Humidifier( )
			    ( A( x == -1 ) or
			        B( ) )
			then
			    propose( COOL_STAGES, $u.stages );
			end

			// belongs to b
			rule "b"
			end
			""";

	@Test
	void crampedRulesAreLaidOut() {
		String cramped = "// The valve.\nrule   \"a\"\n@authority(shop practice)\n  @because( \"x\" )\n\n\n  when\n$u:OutdoorUnit(kind in(A,B),stages>=2)   // two\nnot Humidifier()\n"
				+ "(A(x==-1)or\nB())\nthen\n\tpropose(COOL_STAGES,$u.stages) ;   \nend\n\n\n\n// belongs to b\nrule \"b\"\nend";
		assertEquals(TIDY.replace("// The valve.\n\nrule", "// The valve.\nrule").replace("\"x\" )\nwhen", "\"x\" )\n\nwhen").replace("A( x == -1 )", "A( x == -1 )"), Tidy.of(cramped));
	}

	@Test
	void whatIsTidyStaysAsItIs() {
		assertEquals(TIDY, Tidy.of(TIDY));
		assertEquals(TIDY.replace("\n", "\r\n"), Tidy.of(TIDY.replace("\n", "\r\n")));
	}

	static List<Path> starterRules() throws IOException {
		try (Stream<Path> files = Files.list(Path.of("../../rules/starter/rules"))) {
			return files.sorted().toList();
		}
	}

	@ParameterizedTest
	@MethodSource("starterRules")
	void theStarterBookIsTidy(Path file) throws IOException {
		assertEquals(Files.readString(file), Tidy.of(Files.readString(file)));
	}

	@Test
	void commentsOverSeveralLinesAndHalfOfARuleAreLeftAlone() {
		String comment = "/* a\n     b   c\n*/\nrule \"a\"\nwhen\n";
		assertEquals(comment, Tidy.of(comment));
		String half = "rule \"never closed\n    @because( \"x\nwhen\n";
		assertEquals(half, Tidy.of(half));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			a\\n  b\\nc\\n | 0 | 5 | // a\\n  // b\\nc\\n
			// a\\n  //b\\nc\\n | 0 | 7 | a\\n  b\\nc\\n
			// a\\n  b\\n | 0 | 8 | // // a\\n  // b\\n
			a\\nb\\n | 0 | 2 | // a\\nb\\n
			a\\n\\nb | 0 | 4 | // a\\n\\n// b
			""")
	void linesBecomeCommentsAndRulesAgain(String text, int from, int to, String after) {
		String plain = text.replace("\\n", "\n");
		assertEquals(after.replace("\\n", "\n"), TextEdit.apply(plain, Commenting.toggled(plain, from, to)));
	}

	@Test
	void nothingIsDoneToNothing() {
		assertEquals(List.of(), Commenting.toggled("", 0, 0));
		assertNotEquals(List.of(), Commenting.toggled("a", 1, 1));
	}
}
