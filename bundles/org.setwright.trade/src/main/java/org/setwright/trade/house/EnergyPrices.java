package org.setwright.trade.house;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;

/** What a unit of energy costs, in the local currency; only their ratios matter. */
@About(label = "energy prices", meaning = "What energy costs here, in the local currency.", always = true)
public record EnergyPrices(
		@Asked(label = "electricity per kWh", says = "name {} for a kWh of electricity", meaning = "Price of a kilowatt-hour of electricity.", least = 0.01, most = 5)
		Answer<Quantity> electricityPerKwh,
		@Asked(label = "natural gas per therm", says = "name {} for a therm of natural gas", meaning = "Price of a therm (100 000 Btu) of natural gas.", least = 0.05, most = 50)
		Answer<Quantity> naturalGasPerTherm,
		@Asked(label = "propane per gallon", says = "name {} for a gallon of propane", meaning = "Price of a US gallon of propane.", least = 0.05, most = 50)
		Answer<Quantity> propanePerGallon,
		@Asked(label = "oil per gallon", says = "name {} for a gallon of oil", meaning = "Price of a US gallon of heating oil.", least = 0.05, most = 50)
		Answer<Quantity> oilPerGallon)
		implements Fact {
}
