package org.setwright.landing.need;

import static org.setwright.trade.wiring.TerminalMark.AUX;
import static org.setwright.trade.wiring.TerminalMark.B;
import static org.setwright.trade.wiring.TerminalMark.C;
import static org.setwright.trade.wiring.TerminalMark.DEHUM;
import static org.setwright.trade.wiring.TerminalMark.E;
import static org.setwright.trade.wiring.TerminalMark.G;
import static org.setwright.trade.wiring.TerminalMark.HUM;
import static org.setwright.trade.wiring.TerminalMark.L;
import static org.setwright.trade.wiring.TerminalMark.O;
import static org.setwright.trade.wiring.TerminalMark.O_B;
import static org.setwright.trade.wiring.TerminalMark.OTHER;
import static org.setwright.trade.wiring.TerminalMark.R;
import static org.setwright.trade.wiring.TerminalMark.RC;
import static org.setwright.trade.wiring.TerminalMark.RH;
import static org.setwright.trade.wiring.TerminalMark.S1;
import static org.setwright.trade.wiring.TerminalMark.S2;
import static org.setwright.trade.wiring.TerminalMark.VENT;
import static org.setwright.trade.wiring.TerminalMark.W;
import static org.setwright.trade.wiring.TerminalMark.W2;
import static org.setwright.trade.wiring.TerminalMark.W3;
import static org.setwright.trade.wiring.TerminalMark.Y;
import static org.setwright.trade.wiring.TerminalMark.Y2;
import static org.setwright.trade.wiring.Wire.Colour.BLACK;
import static org.setwright.trade.wiring.Wire.Colour.BLUE;
import static org.setwright.trade.wiring.Wire.Colour.BROWN;
import static org.setwright.trade.wiring.Wire.Colour.GREEN;
import static org.setwright.trade.wiring.Wire.Colour.LIGHT_BLUE;
import static org.setwright.trade.wiring.Wire.Colour.ORANGE;
import static org.setwright.trade.wiring.Wire.Colour.RED;
import static org.setwright.trade.wiring.Wire.Colour.WHITE;
import static org.setwright.trade.wiring.Wire.Colour.YELLOW;

import java.util.List;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/**
 * What a conductor is for, the most important first: when conductors are short, the earlier one gets its conductor. The
 * common stands behind the calls without which nothing heats or cools, because a plug-in transformer can replace it.
 * Terminal letters and colours are common practice and prove nothing.
 */
public enum Duty {
	SUPPLY("24 V supply", 900, List.of(R, RC, RH), List.of(R, RH, RC), RED),
	HEATING_SUPPLY("24 V supply for heating", 890, List.of(RH), List.of(RH, R), RED),
	COOLING_SUPPLY("24 V supply for cooling", 880, List.of(RC), List.of(RC, R), RED),
	SWITCH("thermopile switch", 870, List.of(R, W, RH, Y), List.of(OTHER, R, W), RED, WHITE),
	HEAT("first step of heat", 800, List.of(W), List.of(W), WHITE),
	COMPRESSOR("compressor", 780, List.of(Y), List.of(Y), YELLOW),
	CHANGEOVER("changeover valve", 770, List.of(O_B, O, B), List.of(O, B, O_B), ORANGE, BLUE),
	FAN("indoor fan", 600, List.of(G), List.of(G), GREEN),
	AUXILIARY("auxiliary heat", 500, List.of(AUX, W, W2), List.of(W, W2, AUX), WHITE),
	COMMON("common", 300, List.of(C), List.of(C), BLUE, BLACK, BROWN),
	COMPRESSOR_2("second step of the compressor", 200, List.of(Y2), List.of(Y2), LIGHT_BLUE, BLUE),
	HEAT_2("second step of heat", 180, List.of(W2), List.of(W2), BROWN, BLACK),
	AUXILIARY_2("second step of auxiliary heat", 150, List.of(W2, W3), List.of(W2, W3), BROWN, BLACK),
	EMERGENCY("emergency heat", 140, List.of(E), List.of(E), BROWN),
	HEAT_3("third step of heat", 100, List.of(W3), List.of(W3), BROWN),
	OUTDOOR_SENSOR("outdoor sensor", 96, List.of(S1, S2), List.of(S1, S2)),
	INDOOR_SENSOR("indoor sensor", 94, List.of(S1, S2), List.of(S1, S2)),
	FLOOR_SENSOR("floor sensor", 92, List.of(S1, S2), List.of(S1, S2)),
	HUMIDIFIER("humidifier", 84, List.of(HUM), List.of(HUM)),
	DEHUMIDIFIER("dehumidifier", 82, List.of(DEHUM), List.of(DEHUM)),
	VENTILATOR("ventilator", 80, List.of(VENT), List.of(VENT)),
	FAULT("fault signal", 20, List.of(L), List.of(L));

	private final String label;
	private final int importance;
	private final List<TerminalMark> atWall;
	private final List<TerminalMark> atEquipment;
	private final List<Wire.Colour> colours;

	Duty(String label, int importance, List<TerminalMark> atWall, List<TerminalMark> atEquipment, Wire.Colour... colours) {
		this.label = label;
		this.importance = importance;
		this.atWall = atWall;
		this.atEquipment = atEquipment;
		this.colours = List.of(colours);
	}

	/** @return for people: "second step of heat" */
	public String label() {
		return label;
	}

	/** @return what it weighs to leave it without a conductor, against the others */
	public int importance() {
		return importance;
	}

	/** @return the controller terminals that do it, the usual one first */
	public List<TerminalMark> atWall() {
		return atWall;
	}

	/** @return the equipment terminals that do it, the usual one first */
	public List<TerminalMark> atEquipment() {
		return atEquipment;
	}

	/** @return the customary colours, the most usual first; may be empty */
	public List<Wire.Colour> colours() {
		return colours;
	}

	/** @return whether it brings 24 V to the wall */
	public boolean isSupply() {
		return this == SUPPLY || this == HEATING_SUPPLY || this == COOLING_SUPPLY;
	}

	/** @return whether it belongs to a sensor, which never sees 24 V */
	public boolean isSensor() {
		return this == OUTDOOR_SENSOR || this == INDOOR_SENSOR || this == FLOOR_SENSOR;
	}
}
