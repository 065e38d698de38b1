package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.VOLT_AMPERE;

import java.util.function.Function;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.PoweredBy;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.calculation.circuit.CoilDraw;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.wiring.Transformer;

/** Adds up what draws on the transformer that feeds heating and cooling, coils by their usual draw. */
final class ControlLoad {
	private static final double CONTACTOR = CoilDraw.CONTACTOR.mostVoltAmperes();
	private static final double VALVE = CoilDraw.VALVE.mostVoltAmperes();
	private static final double RELAY = CoilDraw.RELAY.mostVoltAmperes();

	private ControlLoad() {
	}

	/** What the larger coils hold with, in VA. */
	record Coils(Answer<Double> contactor, Answer<Double> changeoverValve, Answer<Double> gasValve) {
		/** By their usual draw. */
		static final Coils USUAL = new Coils(Answer.of(CONTACTOR), Answer.of(VALVE), Answer.of(VALVE));
	}

	/** The compressor with its auxiliary heat, or the indoor unit's own heat, whichever draws more, and all else. */
	static Answer<Double> voltAmperes(Stated stated, Coils coils) {
		Answer<Double> calls = Answer.both(Stated.sum(compressor(stated, coils), auxiliary(stated)), ownHeat(stated, coils), Math::max);
		return Stated.sum(stated.number(Controller.class, Controller::powerDraw, VOLT_AMPERE), fan(stated), calls,
				accessory(stated, Humidifier.class, Humidifier::poweredBy, Humidifier::load),
				accessory(stated, Dehumidifier.class, Dehumidifier::poweredBy, Dehumidifier::load),
				accessory(stated, Ventilator.class, Ventilator::poweredBy, Ventilator::load), zonePanel(stated));
	}

	private static Answer<Double> compressor(Stated stated, Coils coils) {
		return ifAny(stated, OutdoorUnit.class, unit -> Stated.sum(coils.contactor(), unit.stages().map(stages -> RELAY * (stages - 1)),
				unit.kind().then(kind -> kind == OutdoorUnit.Kind.AIR_CONDITIONER ? Answer.of(0.0) : coils.changeoverValve())));
	}

	private static Answer<Double> auxiliary(Stated stated) {
		return ifAny(stated, AuxiliaryHeat.class, heat -> heat.kind().then(kind -> switch (kind) {
			case ELECTRIC_ELEMENTS -> heat.stages().map(stages -> RELAY * stages);
			case HOT_WATER_COIL -> Answer.of(VALVE);
			case FURNACE -> Answer.of(0.0);
		}));
	}

	private static Answer<Double> ownHeat(Stated stated, Coils coils) {
		return ifAny(stated, IndoorUnit.class, unit -> unit.fuel().then(fuel -> switch (fuel) {
			case NATURAL_GAS, PROPANE -> coils.gasValve();
			case OIL -> Answer.of(RELAY);
			case ELECTRIC -> unit.stages().map(stages -> RELAY * stages);
			case NO_FUEL -> Answer.of(0.0);
		}));
	}

	private static Answer<Double> fan(Stated stated) {
		return ifAny(stated, IndoorUnit.class, unit -> unit.kind().map(kind -> switch (kind) {
			case FURNACE, AIR_HANDLER, HYDRONIC_AIR_HANDLER -> RELAY;
			case BOILER, ROOM_HEATER -> 0.0;
		}));
	}

	private static <F extends Fact> Answer<Double> accessory(Stated stated, Class<F> type, Function<F, Answer<PoweredBy>> power,
			Function<F, Answer<Quantity>> load) {
		Answer<Boolean> here = stated.any(type, power, by -> by == PoweredBy.EQUIPMENT_TRANSFORMER);
		return Stated.choose(here, () -> stated.number(type, load, VOLT_AMPERE), () -> Answer.of(0.0));
	}

	private static Answer<Double> zonePanel(Stated stated) {
		Answer<Boolean> elsewhere = stated.any(Transformer.class, Transformer::feeds, feeds -> feeds == Transformer.Feeds.ZONE_PANEL);
		Answer<Double> load = ifAny(stated, ZonePanel.class, panel -> panel.load().map(q -> q.in(VOLT_AMPERE)));
		return load.equals(Answer.of(0.0)) ? load : Stated.choose(elsewhere, () -> Answer.of(0.0), () -> load);
	}

	/** @return what the job's fact of {@code type} draws; 0 when there is none */
	private static <F extends Fact> Answer<Double> ifAny(Stated stated, Class<F> type, Function<F, Answer<Double>> draw) {
		Answer<Boolean> present = stated.any(type, fact -> Answer.of(fact), fact -> true);
		return Stated.choose(present, () -> stated.answer(type, draw), () -> Answer.of(0.0));
	}
}
