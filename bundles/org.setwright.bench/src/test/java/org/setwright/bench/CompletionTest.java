package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.bench.completing.Completion;
import org.setwright.bench.completing.Offer;

/** What could be typed next. */
class CompletionTest {
	private final Session bench = Sample.after(Sample.bench(), "hoses: add blue");

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "pump | pump size: ", "pump si | pump size: ", "pump size: | pump size:unknown",
			"lamp lit: | lamp lit:yes", "lamp: | lamp:lit: ", "lamp: n | lamp: none",
			"hoses: | hoses:add ", "hoses: add { | hoses: add {paint: ", "hoses: add { paint: b | hoses: add { paint: blue",
					"hoses: add re | hoses: add red", "hose 2 pai | hose 2 paint: ", "yard: | yard:gates: ",
			"why sp | why speed", "why not spe | why not speed: ", "why not colour of light: b | why not colour of light: blue",
					"expect colour of light: g | expect colour of light: gap",
			"expect cau | expect caution ", "expect caution st | expect caution stop: ", "expect finding b | expect finding big",
			"drop by | drop \"By size\"", "job we | job 1", "job weir | job 1", "what would make re | what would make \"Red\" speak",
					"set | settled", "what w | what would give ", "pump size + rea | pump size + reach ",
			"not fitted: la | not fitted: lamp", "keep rule x in r | keep rule x in rules/a.drl", "rule \"x\" @auth | rule \"x\" @authority( ",
					"rule \"x\" @authority( shop | rule \"x\" @authority( shop practice )",
			"rule \"x\" when Pu | rule \"x\" when Pump( ", "rule \"x\" when Pump( si | rule \"x\" when Pump( size ",
					"rule \"x\" when Lamp( lit == Y | rule \"x\" when Lamp( lit == YES ",
			"rule \"x\" when Finding( name == B | rule \"x\" when Finding( name == BIG ",
					"rule \"x\" when Pump( ) then propose( SP | rule \"x\" when Pump( ) then propose( SPEED, ",
			"rule \"x\" when Pump( ) then propose( COLOUR, R | rule \"x\" when Pump( ) then propose( COLOUR, RED );", "Pump( si | Pump( size " })
	void offers(String typed, String expected) {
		List<String> all = Completion.of(bench.hand(), typed).stream().map(o -> typed.substring(0, Math.min(o.from(), typed.length())) + o.text()).toList();
		assertTrue(all.stream().anyMatch(o -> o.equals(expected) || o.strip().equals(expected.strip())), typed + ": " + all);
	}

	@Test
	void whatBeginsSoComesFirstAndEachHasItsMeaning() {
		List<Offer> offers = Completion.of(bench.hand(), "l");
		assertEquals("lines", offers.get(0).text());
		assertTrue(offers.stream().anyMatch(o -> o.text().equals("lamp ") && o.meaning().equals("Shines.")), offers.toString());
		assertFalse(offers.get(0).text().startsWith("settled"));
	}

	@Test
	void nothingIsOfferedWhereNothingFits() {
		assertEquals(List.of(), Completion.of(bench.hand(), "zzz"));
		assertEquals(List.of(), Completion.of(bench.hand(), "why qqq"));
		assertEquals(List.of(), Completion.of(bench.hand(), "nobody: "));
	}

	@Test
	void onlyRulesThatWereTypedAreOfferedToBeKept() {
		assertEquals(List.of(), Completion.of(bench.hand(), "keep rule "));
		Session typed = Sample.after(bench, Sample.rule("Mine", "shop practice", "Pump( )", "propose( SPEED, 1 );"));
		assertEquals(List.of("\"Mine\" in "), Completion.of(typed.hand(), "keep rule ").stream().map(Offer::text).toList());
	}
}
