package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.VOLT_AMPERE;

import org.setwright.trade.calculation.circuit.Class2Limit;
import org.setwright.trade.calculation.circuit.ControlTransformer;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;

/** What hangs on the transformer by the labels of the coils themselves, instead of the usual draw of such coils. */
@About(label = "stated load", meaning = "What the transformer has to carry by the labels of the coils, where somebody has read them.")
public record StatedLoad(
		@Calculated(from = { "SitePower.voltage", "Transformer.feeds", "Controller.powerDraw", "OutdoorUnit.kind", "OutdoorUnit.stages", "OutdoorUnit.contactorHolding",
				"OutdoorUnit.changeoverValveLoad", "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.stages", "IndoorUnit.gasValveLoad",
				"AuxiliaryHeat.kind", "AuxiliaryHeat.stages", "Humidifier.poweredBy", "Humidifier.load", "Dehumidifier.poweredBy",
				"Dehumidifier.load", "Ventilator.poweredBy", "Ventilator.load", "ZonePanel.load" },
				formula = "as the usual load, with contactor, changeover valve and gas valve by their labels",
				source = "loads add up: common practice; labels as entered in the job, relays by their usual draw of 2.4 VA")
		@Asked(label = "holding load", meaning = "What everything that holds at the same time draws.", unit = VOLT_AMPERE, least = 0, most = 1000)
		Answer<Quantity> holdingLoad,
		@Calculated(from = { "SitePower.voltage", "Transformer.feeds", "Controller.powerDraw", "OutdoorUnit.kind", "OutdoorUnit.stages", "OutdoorUnit.contactorHolding",
				"OutdoorUnit.changeoverValveLoad", "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.stages", "IndoorUnit.gasValveLoad",
				"AuxiliaryHeat.kind", "AuxiliaryHeat.stages", "Humidifier.poweredBy", "Humidifier.load", "Dehumidifier.poweredBy",
				"Dehumidifier.load", "Ventilator.poweredBy", "Ventilator.load", "ZonePanel.load", "Transformer.rating" },
				formula = "the transformer's rating less the holding load",
				source = "common practice")
		@Asked(label = "left over", says = "has {} left over", meaning = "What is left of the transformer's rating; below 0 VA when it is overloaded.", unit = VOLT_AMPERE, least = -1000, most = 250)
		Answer<Quantity> leftOver,
		@Calculated(from = { "SitePower.voltage", "Transformer.feeds", "Controller.powerDraw", "OutdoorUnit.kind", "OutdoorUnit.stages", "OutdoorUnit.contactorHolding",
				"OutdoorUnit.changeoverValveLoad", "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.stages", "IndoorUnit.gasValveLoad",
				"AuxiliaryHeat.kind", "AuxiliaryHeat.stages", "Humidifier.poweredBy", "Humidifier.load", "Dehumidifier.poweredBy",
				"Dehumidifier.load", "Ventilator.poweredBy", "Ventilator.load", "ZonePanel.load" },
				formula = "100 VA less the holding load",
				source = "NFPA 70, chapter 9, table 11(A): 100 VA for class 2 sources above 20 V, seen in secondary copies")
		@Asked(label = "class 2 reserve", meaning = "What is left of the most a class 2 circuit may carry; below 0 VA it is none.", unit = VOLT_AMPERE, least = -1000, most = 100)
		Answer<Quantity> class2Reserve)
		implements Fact {

	/** @return the load of {@code job}; none when no 24 V transformer feeds both heating and cooling */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		return Stated.entry(ControlCircuit.applies(stated), () -> computed(stated));
	}

	private static StatedLoad computed(Stated stated) {
		Answer<Double> load = ControlLoad.voltAmperes(stated, new ControlLoad.Coils(
				stated.number(OutdoorUnit.class, OutdoorUnit::contactorHolding, VOLT_AMPERE),
				stated.number(OutdoorUnit.class, OutdoorUnit::changeoverValveLoad, VOLT_AMPERE),
				stated.number(IndoorUnit.class, IndoorUnit::gasValveLoad, VOLT_AMPERE)));
		double most = Class2Limit.nameplateVoltAmperes(ControlTransformer.USUAL_VOLTS);
		return new StatedLoad(Stated.quantity(load, VOLT_AMPERE), Stated.quantity(Answer.both(ControlCircuit.rating(stated), load,
				(rating, va) -> ControlTransformer.of24Volts(rating).spareVoltAmperes(va)), VOLT_AMPERE), Stated.quantity(load.map(va -> most - va), VOLT_AMPERE));
	}
}
