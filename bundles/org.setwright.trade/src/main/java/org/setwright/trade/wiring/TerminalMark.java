package org.setwright.trade.wiring;

import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;

/**
 * The letters at a terminal. The letters and their usual duty are common practice, cross-checked in part with public
 * articles on thermostat terminals; a mark never proves what a conductor does until both ends are traced.
 */
public enum TerminalMark implements Choice {
	@Called(label = "R", meaning = "24 V supply from the only transformer, on old equipment also marked V.")
	R,
	@Called(label = "Rh", meaning = "24 V supply from the heating transformer.")
	RH,
	@Called(label = "Rc", meaning = "24 V supply from the cooling transformer.")
	RC,
	@Called(label = "C", meaning = "The transformer's common side, the return of every 24 V load.")
	C,
	@Called(label = "W", meaning = "First step of heat, also marked W1; beside a heat pump it is auxiliary heat.")
	W,
	@Called(label = "W2", meaning = "Second step of heat, or auxiliary heat beside a heat pump.")
	W2,
	@Called(label = "W3", meaning = "Third step of heat, or the second step of auxiliary heat.")
	W3,
	@Called(label = "Y", meaning = "First step of the compressor, also marked Y1.")
	Y,
	@Called(label = "Y2", meaning = "Second step of the compressor.")
	Y2,
	@Called(label = "G", meaning = "Indoor fan.")
	G,
	@Called(label = "O", meaning = "Changeover valve powered in cooling.")
	O,
	@Called(label = "B", meaning = "Changeover valve powered in heating; on some old equipment B is the common, so trace it.")
	B,
	@Called(label = "O/B", meaning = "Changeover valve, powered in cooling or in heating as the controller is set.")
	O_B,
	@Called(label = "Aux", meaning = "Auxiliary heat.")
	AUX,
	@Called(label = "E", meaning = "Emergency heat.")
	E,
	@Called(label = "L", meaning = "Fault signal from the equipment.")
	L,
	@Called(label = "X", meaning = "Ambiguous mark: common, emergency heat or a second step, so trace it.")
	X,
	@Called(label = "Hum", meaning = "Humidifier.")
	HUM,
	@Called(label = "Dehum", meaning = "Dehumidifier, or the fan's slow speed for drying.")
	DEHUM,
	@Called(label = "Vent", meaning = "Ventilator.")
	VENT,
	@Called(label = "S1", meaning = "Remote sensor, first conductor; never 24 V.")
	S1,
	@Called(label = "S2", meaning = "Remote sensor, second conductor; never 24 V.")
	S2,
	@Called(label = "other", meaning = "A mark not in this list; note it and trace it.")
	OTHER,
	@Called(label = "not landed", meaning = "The conductor is spare there, on no terminal.")
	NOT_LANDED
}
