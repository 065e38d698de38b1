package org.setwright.trade.catalogue;

/** A part of a start-up, in the order in which the parts are gone through. */
public enum StartUpPhase implements Choice {
	@Called(label = "before power", meaning = "Everything is off: look, tighten, cover.")
	BEFORE_POWER,
	@Called(label = "power on", meaning = "The breakers go on and nothing is called for yet.")
	POWER_ON,
	@Called(label = "control voltage", meaning = "Measure the low-voltage supply at the controller.")
	CONTROL_VOLTAGE,
	@Called(label = "fan", meaning = "Call for the indoor fan alone.")
	FAN,
	@Called(label = "cooling", meaning = "Call for cooling and prove that it cools.")
	COOLING,
	@Called(label = "heating", meaning = "Call for the first step of heat and prove that it heats.")
	HEATING,
	@Called(label = "second stage and auxiliary heat", meaning = "Call for more heat or cold than the first step gives.")
	SECOND_STAGE,
	@Called(label = "emergency heat", meaning = "Choose emergency heat and prove that the compressor stays off.")
	EMERGENCY_HEAT,
	@Called(label = "changeover and balance", meaning = "Prove what holds compressor and other heat off by outdoor temperature.")
	CHANGEOVER,
	@Called(label = "humidity and ventilation", meaning = "Call for moisture, drying, fresh air and clean air.")
	AIR_QUALITY,
	@Called(label = "safety devices", meaning = "Prove the switches and limits that stop the equipment.")
	SAFETY_DEVICES,
	@Called(label = "hand-over", meaning = "Set the clock, explain, and leave the papers.")
	HAND_OVER
}
