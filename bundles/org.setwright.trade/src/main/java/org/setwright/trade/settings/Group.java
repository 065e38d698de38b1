package org.setwright.trade.settings;

import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** A heading under which settings stand. */
record Group(String label) {
	/** A heat pump, whatever it takes its heat from. */
	static final String HEAT_PUMP = "OutdoorUnit( kind in ( AIR_SOURCE_HEAT_PUMP, GROUND_SOURCE_HEAT_PUMP ) )";
	/** Something heats: the indoor unit by itself, or a heat pump. */
	static final String HEATING = "( IndoorUnit( fuel != NO_FUEL ) or " + HEAT_PUMP + " )";
	/** A fan moves the air. */
	static final String DUCTED = "IndoorUnit( kind in ( FURNACE, AIR_HANDLER, HYDRONIC_AIR_HANDLER ) )";

	Setting setting(String id, String settingLabel, String meaning, Domain domain, String requiredWhen) {
		return new Setting(id, settingLabel, label, meaning, domain, requiredWhen);
	}

	static Domain choice(Class<?> enumType) {
		return Domain.Choices.of(enumType);
	}

	static Domain yesNo() {
		return new Domain.YesNo();
	}

	static Domain fahrenheit(double least, double most) {
		return new Domain.Measure(Unit.FAHRENHEIT, least, most);
	}

	static Domain degrees(double least, double most) {
		return new Domain.Measure(Unit.FAHRENHEIT_DEGREES, least, most);
	}

	static Domain minutes(double least, double most) {
		return new Domain.Measure(Unit.MINUTE, least, most);
	}

	static Domain seconds(double least, double most) {
		return new Domain.Measure(Unit.SECOND, least, most);
	}

	static Domain percent(double least, double most) {
		return new Domain.Measure(Unit.PERCENT, least, most);
	}
}
