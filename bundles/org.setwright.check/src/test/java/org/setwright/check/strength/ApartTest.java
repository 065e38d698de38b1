package org.setwright.check.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.Trade;

class ApartTest {
	private static final String RULE = """
			rule "%s" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when %s then %s end
			""";

	@ParameterizedTest(name = "{0} and {1}: {2}")
	@CsvSource(delimiter = ';', textBlock = """
			IndoorUnit( kind == BOILER )                ; IndoorUnit( kind == FURNACE )                   ; never
			IndoorUnit( kind == BOILER )                ; IndoorUnit( fuel == OIL )                       ; perhaps
			IndoorUnit( kind == BOILER )                ; IndoorUnit( kind == BOILER, fuel == OIL )       ; perhaps
			IndoorUnit( kind in ( BOILER, FURNACE ) )   ; IndoorUnit( kind == ROOM_HEATER )               ; never
			IndoorUnit( kind in ( BOILER, FURNACE ) )   ; IndoorUnit( kind == FURNACE )                   ; perhaps
			IndoorUnit( kind != BOILER )                ; IndoorUnit( kind == BOILER )                    ; never
			IndoorUnit( kind not in ( BOILER ) )        ; IndoorUnit( kind == BOILER )                    ; never
			IndoorUnit( kind != BOILER )                ; IndoorUnit( kind == FURNACE )                   ; perhaps
			IndoorUnit( fuel == UNKNOWN )               ; IndoorUnit( fuel == OIL )                       ; perhaps
			IndoorUnit( fuel == UNKNOWN )               ; IndoorUnit( fuel != OIL )                       ; perhaps
			IndoorUnit( fuel == UNKNOWN )               ; IndoorUnit( fuel == UNKNOWN )                   ; perhaps
			IndoorUnit( fuel == UNKNOWN )               ; IndoorUnit( $f : fuel, stages == 1 )            ; perhaps
			IndoorUnit( fuel == OIL || fuel == UNKNOWN ) ; IndoorUnit( fuel == ELECTRIC )                 ; perhaps
			IndoorUnit( fuel == OIL || fuel == PROPANE ) ; IndoorUnit( fuel == ELECTRIC )                 ; never
			IndoorUnit( fuel == OIL || stages == 1 )    ; IndoorUnit( fuel == ELECTRIC )                  ; perhaps
			IndoorUnit( stages >= 2 )                   ; IndoorUnit( stages == 1 )                       ; never
			IndoorUnit( stages >= 2 )                   ; IndoorUnit( stages < 2 )                        ; never
			IndoorUnit( stages >= 2 )                   ; IndoorUnit( stages <= 2 )                       ; perhaps
			IndoorUnit( stages > 2 )                    ; IndoorUnit( stages <= 2 )                       ; never
			Building( floorArea < "1000 ft2" )          ; Building( floorArea > "300 m2" )                ; never
			Building( floorArea < "1000 ft2" )          ; Building( floorArea > "20 m2" )                 ; perhaps
			Wire( atControl == O )                      ; Wire( atControl == B )                          ; perhaps
			Wire( atControl == O )                      ; not Wire( )                                     ; never
			Wire( atControl == O )                      ; not Wire( atControl == O )                      ; perhaps
			not OutdoorUnit( )                          ; OutdoorUnit( stages == 1 )                      ; never
			not OutdoorUnit( )                          ; not IndoorUnit( )                               ; perhaps
			exists IndoorUnit( kind == BOILER )         ; IndoorUnit( kind == FURNACE )                   ; never
			( IndoorUnit( kind == BOILER ) or IndoorUnit( kind == FURNACE ) ) ; IndoorUnit( kind == ROOM_HEATER ) ; never
			( IndoorUnit( kind == BOILER ) or OutdoorUnit( ) ) ; IndoorUnit( kind == ROOM_HEATER )        ; perhaps
			Finding( name == IT_PUMPS )                 ; not Finding( name == IT_PUMPS )                 ; never
			Finding( name == IT_PUMPS )                 ; OutdoorUnit( kind == AIR_CONDITIONER )          ; never
			Finding( name == IT_PUMPS )                 ; OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )     ; perhaps
			not Finding( name == IT_PUMPS )             ; OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )     ; perhaps
			""")
	void twoRulesAreApartOnlyWhereTheirConditionsContradict(String one, String other, String answer) {
		List<Rule> rules = RuleParser.parse("rules/a.drl", RULE.formatted("Pumps", "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )", "find( IT_PUMPS );")
				+ RULE.formatted("One", one, "propose( HEAT_STAGES, 1 );") + RULE.formatted("Other", other, "propose( HEAT_STAGES, 2 );"), Trade.catalogue()).rules();
		assertEquals(3, rules.size());
		Apart apart = new Apart(rules);
		assertEquals(answer.equals("never"), apart.never(rules.get(1), rules.get(2)));
		assertEquals(answer.equals("never"), apart.never(rules.get(2), rules.get(1)));
	}
}
