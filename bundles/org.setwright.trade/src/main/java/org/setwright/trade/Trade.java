package org.setwright.trade;

import org.setwright.trade.accessories.AirCleaner;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.FloorSensor;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.IndoorSensor;
import org.setwright.trade.accessories.OutdoorSensor;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.calculation.facts.AuxiliaryNeed;
import org.setwright.trade.calculation.facts.ContactorCircuit;
import org.setwright.trade.calculation.facts.ControlCircuit;
import org.setwright.trade.calculation.facts.ControllerSupply;
import org.setwright.trade.calculation.facts.CoolingAirflow;
import org.setwright.trade.calculation.facts.DualFuelChangeover;
import org.setwright.trade.calculation.facts.ElectricHeatCurrent;
import org.setwright.trade.calculation.facts.ElectricHeatRise;
import org.setwright.trade.calculation.facts.HeatPumpBalance;
import org.setwright.trade.calculation.facts.HumidityLimit;
import org.setwright.trade.calculation.facts.LocalClock;
import org.setwright.trade.calculation.facts.StatedLoad;
import org.setwright.trade.calculation.facts.VentilationNeed;
import org.setwright.trade.calculation.facts.VentilatorRunTime;
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
			.calculatedIfAny(HeatPumpBalance.class, HeatPumpBalance::of)
			.calculatedIfAny(AuxiliaryNeed.class, AuxiliaryNeed::of)
			.calculatedIfAny(DualFuelChangeover.class, DualFuelChangeover::of)
			.calculatedIfAny(ControlCircuit.class, ControlCircuit::of)
			.calculatedIfAny(ControllerSupply.class, ControllerSupply::of)
			.calculatedIfAny(ContactorCircuit.class, ContactorCircuit::of)
			.calculatedIfAny(StatedLoad.class, StatedLoad::of)
			.calculated(VentilationNeed.class, VentilationNeed::of)
			.calculatedIfAny(VentilatorRunTime.class, VentilatorRunTime::of)
			.calculated(HumidityLimit.class, HumidityLimit::of)
			.calculatedIfAny(CoolingAirflow.class, CoolingAirflow::of)
			.calculatedIfAny(ElectricHeatRise.class, ElectricHeatRise::of)
			.calculatedIfAny(ElectricHeatCurrent.class, ElectricHeatCurrent::of)
			.calculatedIfAny(LocalClock.class, LocalClock::of)
			.settings(Settings.all())
			.build();

	private Trade() {
	}

	/** @return every kind of fact and every setting of the trade; always the same immutable object */
	public static Catalogue catalogue() {
		return CATALOGUE;
	}
}
