package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.AWG;
import static org.setwright.trade.catalogue.Unit.FOOT;
import static org.setwright.trade.catalogue.Unit.VOLT;
import static org.setwright.trade.catalogue.Unit.VOLT_AMPERE;

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
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.wiring.SitePower;
import org.setwright.trade.wiring.SitePower.Voltage;
import org.setwright.trade.wiring.Wire;

/**
 * Whether the outdoor unit's contactor still pulls in at the end of its cables. Its inrush current flows from the
 * transformer out to the wall and back, and on to the outdoor unit and back.
 */
@About(label = "contactor circuit", meaning = "What the cables leave of the 24 V for the outdoor unit's contactor in the moment it pulls in.")
public record ContactorCircuit(
		@Calculated(from = { "SitePower.voltage", "Wire.atEquipment", "Wire.gauge", "Wire.length", "OutdoorUnit.contactorInrush",
				"OutdoorUnit.controlCableLength", "OutdoorUnit.controlCableGauge" },
				formula = "24 V less the inrush current times the resistance of the cable to the wall and of the control cable, each out and back, at 20 °C",
				source = "Ohm's law; wire by ASTM B258 and IEC 60028; the coil is taken to draw its stated inrush at 24 V, which is the safe side")
		@Asked(label = "voltage at inrush", meaning = "The voltage left at the contactor's coil in the moment it pulls in.", unit = VOLT, least = 0, most = 24)
		Answer<Quantity> voltageAtInrush,
		@Calculated(from = { "SitePower.voltage", "Wire.atEquipment", "Wire.gauge", "Wire.length", "OutdoorUnit.contactorInrush",
				"OutdoorUnit.controlCableLength", "OutdoorUnit.controlCableGauge", "OutdoorUnit.contactorPullIn" },
				formula = "the voltage at inrush less the contactor's pull-in voltage",
				source = "common practice")
		@Asked(label = "pull-in margin", meaning = "By how much the coil's voltage exceeds the pull-in voltage; below 0 V it may chatter.", unit = VOLT, least = -24, most = 12)
		Answer<Quantity> pullInMargin,
		@Calculated(from = { "SitePower.voltage", "Wire.atEquipment", "Wire.gauge", "Wire.length", "OutdoorUnit.contactorInrush",
				"OutdoorUnit.controlCableGauge", "OutdoorUnit.contactorPullIn" },
				formula = "the control cable, one way, that uses up exactly what lies between 24 V and the pull-in voltage; at most 9999 ft",
				source = "Ohm's law; wire by ASTM B258 and IEC 60028")
		@Asked(label = "longest control cable", meaning = "The longest control cable, one way, with which the contactor still pulls in.", unit = FOOT, least = 0, most = 9999)
		Answer<Quantity> longestControlCable)
		implements Fact {

	private static final double CELSIUS = 20;
	private static final double LONGEST_FEET = 9999;

	/** @return the circuit of {@code job}; none without an outdoor unit on 24 V or a supply conductor to the wall */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		Answer<Boolean> applies = Stated.and(stated.any(SitePower.class, SitePower::voltage, v -> v == Voltage.TWENTY_FOUR_VOLT),
				stated.any(OutdoorUnit.class, Answer::of, unit -> true), stated.any(Wire.class, Wire::atEquipment, ControllerSupply::carriesSupply));
		return Stated.entry(applies, () -> computed(stated));
	}

	private static ContactorCircuit computed(Stated stated) {
		Answer<Double> amperes = stated.number(OutdoorUnit.class, OutdoorUnit::contactorInrush, VOLT_AMPERE).map(va -> va / ControlTransformer.USUAL_VOLTS);
		Answer<Double> toWall = Stated.all(ControllerSupply.loops(stated), Math::max);
		Answer<Double> gauge = stated.number(OutdoorUnit.class, OutdoorUnit::controlCableGauge, AWG);
		Answer<Double> outdoors = Answer.both(gauge, stated.number(OutdoorUnit.class, OutdoorUnit::controlCableLength, FOOT),
				(awg, feet) -> new ControlCable(wire(awg), feet, CELSIUS).loopOhms());
		Answer<Double> pullIn = stated.number(OutdoorUnit.class, OutdoorUnit::contactorPullIn, VOLT);
		Answer<Double> volts = Answer.both(Stated.sum(toWall, outdoors), amperes, (ohms, a) -> Math.max(0, ControlTransformer.USUAL_VOLTS - ohms * a));
		Answer<Double> ohmsToSpare = Answer.both(Answer.both(pullIn, amperes, (v, a) -> (ControlTransformer.USUAL_VOLTS - v) / a), toWall, (all, wall) -> all - wall);
		return new ContactorCircuit(Stated.quantity(volts, VOLT), Stated.quantity(Answer.both(volts, pullIn, (v, least) -> v - least), VOLT),
				Stated.quantity(Answer.both(ohmsToSpare, gauge, ContactorCircuit::longest), FOOT));
	}

	private static double longest(double ohms, double gauge) {
		double feet = ohms / (2 * wire(gauge).ohmsPerThousandFeet(CELSIUS)) * 1000;
		return Math.floor(Math.max(0, Math.min(LONGEST_FEET, feet)));
	}

	private static CopperWire wire(double gauge) {
		return new CopperWire((int) Math.round(gauge));
	}
}
