package org.setwright.trade.house;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** The place where the house stands. */
@About(label = "climate", meaning = "The place where the house stands: its winter, its summer, its clock.", always = true)
public record Climate(
		@Asked(label = "heating design temperature", meaning = "Outdoor temperature the heating is sized for.", unit = Unit.FAHRENHEIT, least = -60, most = 65)
		Answer<Quantity> heatingDesignTemperature,
		@Asked(label = "cooling design temperature", meaning = "Outdoor temperature the cooling is sized for.", unit = Unit.FAHRENHEIT, least = 60, most = 130)
		Answer<Quantity> coolingDesignTemperature,
		@Asked(label = "daylight saving", says = "keeps daylight saving|keeps no daylight saving", meaning = "Whether clocks change twice a year there.")
		Answer<Boolean> daylightSaving,
		@Asked(label = "time zone", meaning = "The time zone by its tz database name, for example America/Denver.")
		Answer<String> timeZone,
		@Asked(label = "elevation", meaning = "Height above the sea, which thins the air.", unit = Unit.FOOT, least = -300, most = 14000)
		Answer<Quantity> elevation)
		implements Fact {
}
