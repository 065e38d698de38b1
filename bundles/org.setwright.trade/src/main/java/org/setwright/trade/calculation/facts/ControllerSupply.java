package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.AWG;
import static org.setwright.trade.catalogue.Unit.FOOT;
import static org.setwright.trade.catalogue.Unit.VOLT;

import java.util.List;
import org.setwright.trade.calculation.circuit.ControlCable;
import org.setwright.trade.calculation.circuit.ControlTransformer;
import org.setwright.trade.calculation.circuit.CopperWire;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** What the cable to the controller loses of the 24 V. */
@About(label = "controller supply", meaning = "What the cable between transformer and controller loses of the 24 V.")
public record ControllerSupply(
		@Calculated(from = { "Wire.atEquipment", "Wire.gauge", "Wire.length", "SitePower.voltage", "Transformer.feeds",
				"Controller.powerDraw", "OutdoorUnit.kind", "OutdoorUnit.stages", "IndoorUnit.kind", "IndoorUnit.fuel",
				"IndoorUnit.stages", "AuxiliaryHeat.kind", "AuxiliaryHeat.stages", "Humidifier.poweredBy", "Humidifier.load",
				"Dehumidifier.poweredBy", "Dehumidifier.load", "Ventilator.poweredBy", "Ventilator.load", "ZonePanel.load" },
				through = { "ControlCircuit.usualLoad" },
				formula = "twice the cable's length times the wire's resistance at 20 °C times the usual load's current",
				source = "Ohm's law; wire by ASTM B258 and IEC 60028")
		@Asked(label = "voltage drop", meaning = "The voltage lost on the way out and back when everything holds at the same time.", unit = VOLT, least = 0, most = 1000)
		Answer<Quantity> voltageDrop)
		implements Fact {

	private static final double CELSIUS = 20;

	/** @return the supply of {@code job}; none when no 24 V conductor from R reaches the wall */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		Answer<Boolean> supplied = stated.any(Wire.class, Wire::atEquipment, ControllerSupply::carriesSupply);
		return Stated.entry(Stated.and(ControlCircuit.applies(stated), supplied), () -> new ControllerSupply(drop(stated)));
	}

	static boolean carriesSupply(TerminalMark mark) {
		return mark == TerminalMark.R || mark == TerminalMark.RH || mark == TerminalMark.RC;
	}

	/** The largest, should several carry the supply; unknown while one that might has not been looked up. */
	private static Answer<Quantity> drop(Stated stated) {
		Answer<Double> volts = Answer.both(Stated.all(loops(stated), Math::max), ControlLoad.voltAmperes(stated, ControlLoad.Coils.USUAL),
				(ohms, va) -> ohms * va / ControlTransformer.USUAL_VOLTS);
		return Stated.quantity(volts, VOLT);
	}

	/** @return for each conductor that carries or may carry the supply to the wall, its resistance out and back, in ohm */
	static List<Answer<Double>> loops(Stated stated) {
		return stated.job().all(Wire.class).stream()
				.filter(w -> !w.atEquipment().map(ControllerSupply::carriesSupply).equals(Answer.of(false)))
				.map(w -> w.atEquipment().then(mark -> Answer.both(w.gauge(), w.length(), ControllerSupply::loopOhms))).toList();
	}

	private static double loopOhms(Quantity gauge, Quantity length) {
		return new ControlCable(new CopperWire((int) Math.round(gauge.in(AWG))), length.in(FOOT), CELSIUS).loopOhms();
	}
}
