package org.setwright.workbench.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

class OutlineLineTest {
	private static List<String> lines(String rules) {
		return OutlineLine.of(rules, Trade.catalogue()).stream().map(l -> l.text() + l.inside().stream().map(i -> "/" + i.text()).toList()).toList();
	}

	@Test
	void everyRuleIsALineWithWhatItSaysInside() {
		assertEquals(List.of("a[/propose cooling stages $s, /find X, /caution NOTE]", "b[]"),
				lines("rule \"a\"\nwhen\nthen\n propose( COOL_STAGES, $s );\n find( X ); caution( NOTE, \"n\" );\nend\nrule \"b\"\nwhen\nthen\nend\n"));
	}

	@Test
	void halfWrittenRulesHaveALineToo() {
		assertEquals(List.of("(no name yet)[]", "b[/propose NOTHING_KNOWN 1]"), lines("rule\n\nrule \"b\" then propose( NOTHING_KNOWN, 1"));
		assertEquals(List.of(), lines("// rule \"a\" end"));
	}
}
