package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expressions over answers, settings and numbers with units. */
class ExpressionTest {
	private final Session bench = Sample.after(Sample.bench(), "pump coldest: 50 °F");

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "pump size + 1 | 2", "2 + 3 * 4 | 14", "( 2 + 3 ) * 4 | 20", "7 - -2 | 9", "10 / 4 | 2.5",
			"pump lift + 1 ft | 11 ft",
			"pump lift * 2 in m | 6.096 m", "pump lift in m | 3.048 m", "reach distance / pump lift | 2", "speed + 1 | 2", "pump coldest + 5 F° | 55 °F",
			"pump coldest - 41 °F | 9 F°", "pump coldest in C | 10 °C", "24 V * 2 A | 48 VA", "48 VA / 24 V | 2 A", "48 VA / 2 A | 24 V",
					"12,000 Btu/h in ton | 1 ton",
			"pump size = 1 | yes", "pump size > 1 | no", "pump size is 1 | yes", "pump lift >= 3 m | yes", "pump lift != 10 ft | no",
					"hose 1 paint = red | yes",
			"hose 1 paint is blue | no", "hoses + 1 | 2", "lamp lit = yes | not known yet: lamp: lit", "alarm - 10 F° | not known yet: alarm is not settled",
			"colour of light = red | not known yet: colour of light is not needed" })
	void comesTo(String expression, String expected) {
		assertEquals(expected, Sample.told(bench, expression));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "pump coldest + 3 °F | 1:14 Two temperatures cannot be added. Add a difference, written like 5 F° or 3 C°.",
			"pump lift + 3 V | 1:11 3 V cannot be added to 10 ft: one is length, the other voltage. Write both in units of the same kind.",
			"pump lift * 3 ft | 1:11 10 ft and 3 ft cannot be multiplied here. Multiply by a plain number, or volts by amperes.",
			"1 / 0 | 1:3 Nothing can be divided by zero. Divide by another number.", "( 1 + 2 | 1:8 A bracket is not closed. Write ) where it ends.",
			"hose 1 paint + 1 | 1:14 \"red\" is no number to reckon with. Write an answer of the job, a setting, or a number with its unit, joined by + - * / or compared by = < >.",
			"hose 1 paint = green | 1:14 That is never \"green\". Write one of: red, blue.",
					"pump lift in kg | 1:14 10 ft cannot be shown in \"kg\". Write one of: m, ft.",
			"pump colour + 1 | 1:1 It is not said which answer about the pump is meant. Write it after the name, for example \"pump size\".",
			"frob | 1:1 There is no fact called \"frob\". Type \"words\" to see what can be said.",
					"2 + | 1:4 Something is missing at the end. Write an answer of the job, a setting, or a number with its unit, joined by + - * / or compared by = < >." })
	void makesNoSense(String expression, String expected) {
		assertEquals(expected, Sample.misread(bench, expression));
	}

	@Test
	void aCalculationIsShownWithFormulaAndSource() {
		assertEquals("""
				reach: distance: 20 ft
				  worked out: twice the lift
				  source: common practice
				  from pump: lift is 10 ft
				  The farthest.""", Sample.told(bench, "reach distance"));
		assertEquals("reach\n  distance: 20 ft\n    twice the lift\n    source: common practice", Sample.told(bench, "calculations"));
	}

	@Test
	void aConditionInTheLanguageOfRulesIsTried() {
		assertEquals("Yes, that holds.\n  The pump has 1 size.", Sample.told(bench, "Pump( size < 2 )"));
		assertEquals("No, that does not hold.", Sample.told(bench, "Pump( size > 2 )?").lines().findFirst().orElse(""));
		assertEquals("That is open: it depends on what is unknown.", Sample.told(Sample.after(bench, "pump size: unknown"),
				"not Pump( size > 2 )").lines().findFirst().orElse(""));
		assertEquals("1:7 The pump has no field \"sice\". Did you mean size?", Sample.misread(bench, "Pump( sice > 2 )"));
	}
}
