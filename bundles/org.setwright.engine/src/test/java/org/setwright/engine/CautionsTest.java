package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Caution;

/**
 * What can hurt people, houses or equipment is warned of on the jobs that have it and on no others. Who may do the work
 * and whose word comes first stand in the sentence itself.
 */
class CautionsTest {
	private static final Pattern WHO = Pattern.compile("licensed|certified|qualified", Pattern.CASE_INSENSITIVE);
	private static final Pattern FIRST = Pattern.compile("local|code|maker|EPA section 608|designer|owner|allows", Pattern.CASE_INSENSITIVE);

	/** A hazard, the rule that warns, a job that has it, one that has not. The notes of the jobs say why. */
	@ParameterizedTest(name = "{0}: {2}, not {3}")
	@CsvSource(delimiter = '|', textBlock = """
			line voltage at the wall           | Line voltage at the wall                            | cottage-line-voltage   | demo
			line voltage, thick conductors     | Thick conductors may carry line voltage             | net-loft-thick-wires   | larch-lane-14
			line voltage, nobody measured      | Voltage not measured                                | incomplete-heat-pump   | demo
			line voltage inside the equipment  | Switch off before touching conductors               | demo                   | cabin-stove
			two supplies tied together         | The old control tied two transformers together      | chapel-hill-9          | misset-link-out
			more than 30 V                     | Too many volts between R and C                      | crossed-wires          | chapel-hill-9
			an overloaded transformer          | The transformer is too small for its loads          | brewery-lane-overloaded | demo
			a long thin cable                  | The cable is too long or too thin                   | boiler-hill-long-cable | demo
			gas                                | Gas                                                 | mill-street-8          | oil-hill-7
			gas from a tank                    | Propane sinks                                       | stone-barn             | mill-street-8
			a gas valve on millivolts          | A thermopile circuit                                | cabin-stove            | mill-street-8
			oil                                | Oil                                                 | manse-3                | mill-street-8
			carbon monoxide, no alarm          | Carbon monoxide alarms missing                      | workshop-oil-stove     | quarry-road-2
			carbon monoxide, not looked for    | Carbon monoxide alarms not looked for               | manse-3                | workshop-oil-stove
			carbon monoxide, no flame at all   | Carbon monoxide alarms not looked for               | manse-3                | mews-lane-2
			flue gas drawn back                | An exhaust fan with a flame in the house            | fresh-air-exhaust      | fresh-air-damper
			refrigerant                        | Refrigerant                                         | kiosk                  | manse-3
			electric elements                  | Electric elements in the air stream                 | palm-terrace-21        | mews-lane-2
			elements without a fan             | Elements in a unit said to have no fan              | elements-without-fan   | palm-terrace-21
			elements with too little air       | The elements warm the air too much                  | gulf-shore-dehumidifier | palm-terrace-21
			elements with air nobody measured  | Nobody has said how much air passes the elements    | demo                   | palm-terrace-21
			a cooling coil with too little air | Too little air over the cooling coil                | desert-court-6         | orchard-rise-nameplate
			freezing pipes                     | Pipes that can freeze keep the house at fifty-five  | manse-3                | stone-barn
			freezing pipes, nobody looked      | Pipes not looked at: keep fifty-five, and look      | bath-house             | manse-3
			an empty house in winter           | An empty house in winter stays at fifty-five        | cabin-stove            | demo
			a house left cold                  | The heat pump alone is too small for the coldest day | too-cold-for-it       | demo
			compressor short-cycling           | A compressor that short-cycles wears out            | loop-barn-6            | manse-3
			compressor, a rest too short       | The stated rest is short for a compressor           | lighthouse-short-rest  | quarry-road-2
			compressor, power cuts             | A compressor where the power often fails            | lighthouse-short-rest  | harbour-view-5
			compressor, cold oil               | A crankcase heater needs hours of power first       | orchard-rise-nameplate | lighthouse-short-rest
			low outdoor temperature, a test    | Cold weather and a cooling test                     | demo                   | loop-barn-6
			low outdoor temperature, no sensor | Nothing holds cooling off in cold weather           | mill-street-8          | demo
			burner and compressor together     | Compressor and burner never together                | granary-ground-propane | loop-barn-6
			COP entered swapped                | COP entered higher in cold than in mild air         | sluice-cottage         | orchard-ave-40
			capacity entered swapped           | Capacity entered higher in cold than in mild air    | sluice-cottage         | orchard-ave-40
			""")
	void isRaisedWhereItBelongsAndNowhereElse(String hazard, String rule, String yes, String no) {
		assertTrue(warning(yes).contains(rule), hazard + " on " + yes + ": " + warning(yes));
		assertFalse(warning(no).contains(rule), hazard + " on " + no);
	}

	/** The hazards of a house: for each the sentence says who may do the work, and that others' words come first. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			Line voltage at the wall
			Switch off before touching conductors
			Gas
			Oil
			Carbon monoxide alarms missing
			Carbon monoxide alarms not looked for
			An exhaust fan with a flame in the house
			Refrigerant
			Electric elements in the air stream
			Elements in a unit said to have no fan
			The elements warm the air too much
			Nobody has said how much air passes the elements
			Pipes that can freeze keep the house at fifty-five
			An empty house in winter stays at fifty-five
			A compressor that short-cycles wears out
			A compressor where the power often fails
			The stated rest is short for a compressor
			Cold weather and a cooling test
			Nothing holds cooling off in cold weather
			The transformer is too small for its loads
			""")
	void saysWhoMayDoTheWorkAndWhoseWordComesFirst(String name) {
		List<Action.Warn> warnings = StarterRuns.EDITION.rule(name).map(Rule::then).orElseThrow(() -> new AssertionError("no rule " + name)).stream()
				.filter(Action.Warn.class::isInstance).map(Action.Warn.class::cast).toList();
		assertEquals(1, warnings.size(), name);
		String sentence = warnings.get(0).sentence();
		assertTrue(WHO.matcher(sentence).find() || sentence.contains("owner has to fit"), "who: " + sentence);
		assertTrue(FIRST.matcher(sentence).find(), "whose word: " + sentence);
	}

	/** @return the names of the rules behind the cautions of the job in file {@code job} */
	private static List<String> warning(String job) {
		return StarterRuns.outcome(job).cautions().stream().map(Caution::raisedBy).flatMap(List::stream).map(f -> f.rule().name()).distinct().toList();
	}
}
