package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.BTU_PER_HOUR;
import static org.setwright.trade.catalogue.Unit.FAHRENHEIT;
import static org.setwright.trade.catalogue.Unit.KILOWATT;

import org.setwright.trade.calculation.Range;
import org.setwright.trade.calculation.heatpump.BalancePoint;
import org.setwright.trade.calculation.heatpump.HeatingCapacity;
import org.setwright.trade.calculation.heatpump.LoadLine;
import org.setwright.trade.calculation.heatpump.Lockouts;
import org.setwright.trade.calculation.heatpump.Shortfall;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.house.Building;
import org.setwright.trade.house.Climate;

/** What an air-source heat pump leaves for auxiliary heat to do. */
@About(label = "heat pump balance", meaning = "What an air-source heat pump can carry of the house's heat loss, and what it leaves to auxiliary heat.")
public record HeatPumpBalance(
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F",
				"Building.designHeatLoss", "Climate.heatingDesignTemperature" },
				formula = "where heating capacity (a straight line through 17 °F and 47 °F, less 10 % at 35 °F for frost) meets heat loss (a straight line from the design temperature to none at 65 °F)",
				source = "10 CFR 430 subpart B appendix M, section 4.2.1, for the capacity; the load line is common practice")
		@Asked(label = "balance point", meaning = "Outdoor temperature below which the heat pump alone cannot keep up; -80 °F when it always can.", unit = FAHRENHEIT, least = -80, most = 75)
		Answer<Quantity> balancePoint,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F",
				"Building.designHeatLoss", "Climate.heatingDesignTemperature" },
				formula = "heat loss less heating capacity at the heating design temperature, none when capacity is larger",
				source = "heat balance; 1 kW = 3412.142 Btu/h")
		@Asked(label = "shortfall at design", meaning = "Heat missing at the heating design temperature, which auxiliary heat has to give.", unit = KILOWATT, least = 0, most = 200)
		Answer<Quantity> shortfallAtDesign,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F",
				"Building.designHeatLoss", "Climate.heatingDesignTemperature" },
				through = { "HeatPumpBalance.balancePoint" },
				formula = "the balance point, rounded up to a whole degree, not below 0 °F and not above 70 °F",
				source = "ASHRAE 90.1-2016 section 6.4.3.5 and IECC C403.4.1.1: no auxiliary heat while the heat pump carries the load, defrost excepted")
		@Asked(label = "auxiliary lockout", meaning = "Outdoor temperature above which auxiliary heat is not needed.", unit = FAHRENHEIT, least = 0, most = 70)
		Answer<Quantity> auxiliaryLockout)
		implements Fact {

	private static final double COLDEST = Range.OUTDOOR_FAHRENHEIT.least();
	private static final double LEAST_SPAN = 5;

	/** @return the balance of {@code job}'s heat pump; none when its outdoor unit is no air-source heat pump */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		return Stated.entry(airSource(stated), () -> computed(stated));
	}

	static Answer<Boolean> airSource(Stated stated) {
		return stated.any(OutdoorUnit.class, OutdoorUnit::kind, kind -> kind == OutdoorUnit.Kind.AIR_SOURCE_HEAT_PUMP);
	}

	/** @return the balance point of {@code stated}'s heat pump, in °F */
	static Answer<Double> balancePoint(Stated stated) {
		return Answer.both(capacity(stated), load(stated), (c, l) -> BalancePoint.fahrenheit(c, l).orElse(COLDEST));
	}

	/** @return what {@code stated}'s heat pump lacks at the heating design temperature, in kW */
	static Answer<Double> shortfallKilowatts(Stated stated) {
		return Answer.both(capacity(stated), load(stated), (c, l) -> Shortfall.kilowatts(c, l, l.atFahrenheit()));
	}

	private static HeatPumpBalance computed(Stated stated) {
		Answer<Double> balance = balancePoint(stated);
		Answer<Double> lockout = balance.map(t -> Math.min(70.0, Math.max(0, Lockouts.auxiliaryFahrenheit(t, 0))));
		return new HeatPumpBalance(Stated.quantity(balance, FAHRENHEIT), Stated.quantity(shortfallKilowatts(stated), KILOWATT),
				Stated.quantity(lockout, FAHRENHEIT));
	}

	private static Answer<HeatingCapacity> capacity(Stated stated) {
		return Answer.both(stated.number(OutdoorUnit.class, OutdoorUnit::heatingCapacityAt17F, BTU_PER_HOUR),
				stated.number(OutdoorUnit.class, OutdoorUnit::heatingCapacityAt47F, BTU_PER_HOUR),
				HeatingCapacity::withUsualFrost);
	}

	/** Where it is hardly ever cold the line still needs a span: it then ends 5 F° above the design temperature. */
	private static Answer<LoadLine> load(Stated stated) {
		return Answer.both(stated.number(Building.class, Building::designHeatLoss, BTU_PER_HOUR),
				stated.number(Climate.class, Climate::heatingDesignTemperature, FAHRENHEIT), (loss, design) -> new LoadLine(loss,
						design, Math.max(LoadLine.USUAL_ZERO_FAHRENHEIT, design + LEAST_SPAN)));
	}
}
