package org.setwright.trade.house;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** What the people who live there want. */
@About(label = "wishes", meaning = "What the people who live there want.", always = true)
public record Wishes(
		@Asked(label = "schedule", says = "ask for the schedule \"{}\"", meaning = "How their days differ.", changesOnSite = true)
		Answer<Schedule> schedule,
		@Asked(label = "clock format", says = "ask for a {} clock", meaning = "How they read the clock.", changesOnSite = true)
		Answer<ClockFormat> clockFormat,
		@Asked(label = "temperature unit", says = "ask for {}", meaning = "In which unit they read temperatures.", changesOnSite = true)
		Answer<TemperatureUnit> temperatureUnit,
		@Asked(label = "heat when home", says = "ask for heating to {} when home", meaning = "Heating set point while they are up and at home.", unit = Unit.FAHRENHEIT, least = 45, most = 90, changesOnSite = true)
		Answer<Quantity> heatWhenHome,
		@Asked(label = "heat setback", says = "ask for a heat setback of {}", meaning = "How many degrees they let the house cool while they sleep or are out in winter.", unit = Unit.FAHRENHEIT_DEGREES, least = 0, most = 20, changesOnSite = true)
		Answer<Quantity> heatSetback,
		@Asked(label = "cool when home", says = "ask for cooling to {} when home", meaning = "Cooling set point while they are at home.", unit = Unit.FAHRENHEIT, least = 60, most = 95, changesOnSite = true)
		Answer<Quantity> coolWhenHome,
		@Asked(label = "cool setback", says = "ask for a cool setback of {}", meaning = "How many degrees they let the house warm while they are out in summer.", unit = Unit.FAHRENHEIT_DEGREES, least = 0, most = 20, changesOnSite = true)
		Answer<Quantity> coolSetback,
		@Asked(label = "automatic changeover", says = "ask for automatic changeover|ask for no automatic changeover", meaning = "Whether the controller may change between heating and cooling by itself.", changesOnSite = true)
		Answer<Boolean> automaticChangeover,
		@Asked(label = "fan between calls", says = "say of the fan between calls: \"{}\"", meaning = "What the indoor fan does while nothing heats or cools.", changesOnSite = true)
		Answer<FanBetweenCalls> fanBetweenCalls,
		@Asked(label = "away in winter", says = "say that the house stands empty in winter|say that the house does not stand empty in winter", meaning = "Whether they leave the house empty for days in the cold season.", changesOnSite = true)
		Answer<Boolean> awayInWinter,
		@Asked(label = "limited access", says = "ask for limited access|ask for no limited access", meaning = "Whether tenants, guests or children should not change everything.", changesOnSite = true)
		Answer<Boolean> limitedAccess)
		implements Fact {

	/** How the days differ. */
	public enum Schedule implements Choice {
		@Called(label = "every day alike", meaning = "One programme for all seven days.")
		EVERY_DAY_ALIKE,
		@Called(label = "weekdays and weekend", meaning = "One programme for weekdays and another for the weekend.")
		WEEKDAYS_AND_WEEKEND,
		@Called(label = "every day different", meaning = "A programme for each day of the week.")
		EVERY_DAY_DIFFERENT,
		@Called(label = "no schedule", meaning = "One set point until somebody changes it.")
		NO_SCHEDULE
	}

	/** How a clock is read. */
	public enum ClockFormat implements Choice {
		@Called(label = "12-hour", meaning = "Hours 1 to 12 with a.m. and p.m.")
		TWELVE_HOUR,
		@Called(label = "24-hour", meaning = "Hours 0 to 23.")
		TWENTY_FOUR_HOUR
	}

	/** In which unit temperatures are shown. */
	public enum TemperatureUnit implements Choice {
		@Called(label = "Fahrenheit", meaning = "Degrees Fahrenheit.")
		FAHRENHEIT,
		@Called(label = "Celsius", meaning = "Degrees Celsius.")
		CELSIUS
	}

	/** What the indoor fan does while nothing heats or cools. */
	public enum FanBetweenCalls implements Choice {
		@Called(label = "rests", meaning = "It runs only with calls.")
		RESTS,
		@Called(label = "part of each hour", meaning = "It runs some minutes of each hour to even out the rooms.")
		PART_OF_EACH_HOUR,
		@Called(label = "always runs", meaning = "It never stops.")
		ALWAYS_RUNS
	}
}
