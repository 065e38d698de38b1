package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.FAHRENHEIT;
import static org.setwright.trade.catalogue.Unit.PERCENT;

import org.setwright.trade.calculation.humidity.WindowGlass;
import org.setwright.trade.calculation.humidity.WinterHumidity;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.house.Building;
import org.setwright.trade.house.Climate;

/** How humid the house may be in winter before its windows run wet. */
@About(label = "humidity limit", meaning = "How humid the house may be in winter before its windows run wet.", always = true)
public record HumidityLimit(
		@Calculated(from = { "Building.windowGlazing", "Climate.heatingDesignTemperature" },
				formula = "25 % and half a percent for each °F of the heating design temperature, from 15 to 40 %; less where the glass, by its panes, would run wet at 70 °F indoors",
				source = "Minnesota Department of Public Service, and a table ascribed to ASHRAE, for double glazing; ASHRAE Fundamentals chapter 15 for the glass")
		@Asked(label = "at design temperature", says = "comes to {} at the design temperature", meaning = "The most relative humidity to keep indoors at the heating design temperature.", unit = PERCENT, least = 0, most = 40)
		Answer<Quantity> atDesignTemperature)
		implements Fact {

	private static final double INDOOR_FAHRENHEIT = 70;

	/** @return the limit of {@code job}, in whole percent rounded down */
	public static HumidityLimit of(Job job) {
		Stated stated = new Stated(job);
		Answer<WindowGlass> glass = stated.answer(Building.class, Building::windowGlazing).map(HumidityLimit::glass);
		Answer<Double> design = stated.number(Climate.class, Climate::heatingDesignTemperature, FAHRENHEIT);
		return new HumidityLimit(Answer.both(glass, design, (g, outdoor) -> new Quantity(
				Math.floor(WinterHumidity.limitPercent(g, INDOOR_FAHRENHEIT, outdoor) + 1e-9), PERCENT)));
	}

	private static WindowGlass glass(Building.Glazing glazing) {
		return switch (glazing) {
			case SINGLE -> WindowGlass.SINGLE;
			case DOUBLE -> WindowGlass.DOUBLE;
			case TRIPLE -> WindowGlass.TRIPLE;
		};
	}
}
