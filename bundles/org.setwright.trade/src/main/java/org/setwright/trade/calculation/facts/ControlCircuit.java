package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.VOLT_AMPERE;

import java.util.List;
import org.setwright.trade.calculation.circuit.ControlTransformer;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.wiring.SitePower;
import org.setwright.trade.wiring.Transformer;

/** What hangs on the transformer that feeds heating and cooling. */
@About(label = "control circuit", meaning = "What hangs on the one transformer that feeds heating and cooling, against what it can carry.")
public record ControlCircuit(
		@Calculated(from = { "SitePower.voltage", "Transformer.feeds", "Controller.powerDraw", "OutdoorUnit.kind", "OutdoorUnit.stages",
				"IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.stages", "AuxiliaryHeat.kind", "AuxiliaryHeat.stages",
				"Humidifier.poweredBy", "Humidifier.load", "Dehumidifier.poweredBy", "Dehumidifier.load", "Ventilator.poweredBy",
				"Ventilator.load", "ZonePanel.load" },
				formula = "controller, accessories on this transformer, and the usual draw of the coils that hold at the same time: contactor 12 VA, valve 7.2 VA, relay 2.4 VA",
				source = "loads add up: common practice; coil draws: upper ends of a training module's ranges, so the labels go first")
		@Asked(label = "usual load", says = "has a usual load of {}", meaning = "What the transformer usually has to carry at most, with coils estimated.", unit = VOLT_AMPERE, least = 0, most = 1000)
		Answer<Quantity> usualLoad,
		@Calculated(from = { "SitePower.voltage", "Transformer.feeds", "Transformer.rating", "Controller.powerDraw", "OutdoorUnit.kind",
				"OutdoorUnit.stages", "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.stages", "AuxiliaryHeat.kind",
				"AuxiliaryHeat.stages", "Humidifier.poweredBy", "Humidifier.load", "Dehumidifier.poweredBy", "Dehumidifier.load",
				"Ventilator.poweredBy", "Ventilator.load", "ZonePanel.load" },
				through = { "ControlCircuit.usualLoad" },
				formula = "the transformer's rating less the usual load",
				source = "common practice")
		@Asked(label = "spare", meaning = "What is left of the transformer's rating; below 0 VA when it is overloaded.", unit = VOLT_AMPERE, least = -1000, most = 250)
		Answer<Quantity> spare)
		implements Fact {

	/** @return the circuit of {@code job}; none when no 24 V transformer feeds both heating and cooling */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		return Stated.entry(applies(stated), () -> computed(stated));
	}

	static Answer<Boolean> applies(Stated stated) {
		return Stated.and(
				stated.any(SitePower.class, SitePower::voltage, voltage -> voltage == SitePower.Voltage.TWENTY_FOUR_VOLT),
				stated.any(Transformer.class, Transformer::feeds, ControlCircuit::feedsBoth));
	}

	private static boolean feedsBoth(Transformer.Feeds feeds) {
		return feeds == Transformer.Feeds.HEATING_AND_COOLING;
	}

	private static ControlCircuit computed(Stated stated) {
		Answer<Double> load = ControlLoad.voltAmperes(stated, ControlLoad.Coils.USUAL);
		return new ControlCircuit(Stated.quantity(load, VOLT_AMPERE), Stated.quantity(Answer.both(rating(stated), load,
				(rating, va) -> ControlTransformer.of24Volts(rating).spareVoltAmperes(va)), VOLT_AMPERE));
	}

	/** The smallest, should several be said to feed both; unknown while one that might has not been looked up. */
	static Answer<Double> rating(Stated stated) {
		List<Answer<Double>> ratings = stated.job().all(Transformer.class).stream()
				.filter(t -> !t.feeds().map(ControlCircuit::feedsBoth).equals(Answer.of(false)))
				.map(t -> t.feeds().then(feeds -> t.rating().map(q -> q.in(VOLT_AMPERE)))).toList();
		return Stated.all(ratings, Math::min);
	}
}
