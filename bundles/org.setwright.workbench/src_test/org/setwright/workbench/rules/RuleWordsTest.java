package org.setwright.workbench.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.look.Palette.Ink;

class RuleWordsTest {
	@Test
	void everyKindOfWordHasItsColour() {
		String rule = "rule \"say when\" // then\n@because( \"x\" )\nOutdoorUnit( stages >= 2, kind == AIR_CONDITIONER )\n/* end */";
		assertEquals(List.of("KEYWORD rule", "STRING \"say when\"", "COMMENT // then", "ANNOTATION @because", "STRING \"x\"",
				"FACT OutdoorUnit", "FIELD stages", "CONSTANT 2", "FIELD kind", "CONSTANT AIR_CONDITIONER", "COMMENT /* end */"), words(rule));
	}

	@Test
	void settingsAuthoritiesAndFieldsAreToldApartFromValues() {
		assertEquals(List.of("KEYWORD propose", "SETTING COOL_STAGES", "CONSTANT TWO"), words("propose( COOL_STAGES, TWO );"));
		assertEquals(List.of("ANNOTATION @authority", "AUTHORITY shop practice"), words("@authority( shop practice )"));
		assertEquals(List.of("ANNOTATION @authority", "AUTHORITY \"maker's instructions\""), words("@authority( \"maker's instructions\" )"));
		assertEquals(List.of("ANNOTATION @source"), words("@source( common practice: yes )"));
		assertEquals(List.of("FACT Wire", "FIELD colour", "FIELD gauge", "KEYWORD not", "KEYWORD in", "CONSTANT AWG"),
				words("Wire( $c : colour, gauge not in ( AWG ) )"));
		assertEquals(List.of("FIELD stages"), words("$unit.stages"));
	}

	@Test
	void anUnfinishedTextEndsWithItsLine() {
		assertEquals(List.of("STRING \"open", "KEYWORD when"), words("\"open\nwhen"));
	}

	@Test
	void anUnfinishedCommentColoursTheRest() {
		assertEquals(List.of("COMMENT /* rule\nwhen"), words("/* rule\nwhen"));
	}

	@Test
	void readingsStandOutInTheirText() {
		assertEquals(List.of("KEYWORD startUp", "CONSTANT FAN", "STRING \"see ", "CONSTANT {15..20 F°}", "STRING  more\"", "CONSTANT {$x}"),
				words("startUp( FAN, \"see {15..20 F°} more\", \"{$x}\"").stream().filter(w -> !w.equals("STRING \"")).toList());
	}

	@Test
	void plainWordsStayPlain() {
		assertEquals(List.of(), words("stages $s kind"));
		assertEquals(Ink.CONSTANT, RuleWords.in("YES").get(0).ink());
	}

	private static List<String> words(String text) {
		return RuleWords.in(text).stream().map(s -> s.ink() + " " + text.substring(s.start(), s.start() + s.length())).toList();
	}
}
