package org.setwright.trade;

import org.setwright.trade.accessories.AirCleaner;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.FloorSensor;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.IndoorSensor;
import org.setwright.trade.accessories.OutdoorSensor;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.controller.ControllerTerminal;
import org.setwright.trade.controller.OldControl;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.house.Building;
import org.setwright.trade.house.Climate;
import org.setwright.trade.house.EnergyPrices;
import org.setwright.trade.house.Wishes;
import org.setwright.trade.settings.Settings;
import org.setwright.trade.wiring.EquipmentTerminal;
import org.setwright.trade.wiring.SitePower;
import org.setwright.trade.wiring.Transformer;
import org.setwright.trade.wiring.Wire;

/** The trade's own catalogue: start here to find a fact or a setting. */
public final class Trade {
	private static final Catalogue CATALOGUE = new Catalogue.Builder()
			.facts(SitePower.class, Transformer.class, Wire.class, OldControl.class)
			.facts(OutdoorUnit.class, IndoorUnit.class, AuxiliaryHeat.class, EquipmentTerminal.class)
			.facts(Controller.class, ControllerTerminal.class)
			.facts(ZonePanel.class, Humidifier.class, Dehumidifier.class, Ventilator.class, AirCleaner.class)
			.facts(OutdoorSensor.class, IndoorSensor.class, FloorSensor.class)
			.facts(Building.class, Climate.class, Wishes.class, EnergyPrices.class)
			.settings(Settings.all())
			.build();

	private Trade() {
	}

	/** @return every kind of fact and every setting of the trade; always the same immutable object */
	public static Catalogue catalogue() {
		return CATALOGUE;
	}
}
