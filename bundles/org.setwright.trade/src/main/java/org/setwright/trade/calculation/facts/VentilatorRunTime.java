package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.CUBIC_FOOT_PER_MINUTE;
import static org.setwright.trade.catalogue.Unit.MINUTE;

import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.calculation.ventilation.IntermittentFan;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;

/** How long the ventilator has to run. There is none when the ventilator is too small: no running time would do. */
@About(label = "ventilator run time", meaning = "How long the ventilator has to run for the air the house needs; there is none when it is too small.")
public record VentilatorRunTime(
		@Calculated(from = { "Ventilator.airflow", "Building.ventilationRule", "Building.floorArea", "Building.bedrooms" },
				through = { "VentilationNeed.airflowNeeded" },
				formula = "60 minutes times airflow needed over the ventilator's airflow, rounded up to a whole minute",
				source = "ASHRAE 62.2-2016 section 4.5")
		@Asked(label = "minutes per hour", says = "comes to {} of each hour", meaning = "How many minutes of each hour the ventilator has to run.", unit = MINUTE, least = 0, most = 60)
		Answer<Quantity> minutesPerHour)
		implements Fact {

	/** @return the run time for {@code job}; none without a ventilator, or when it is too small */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		Answer<Double> need = VentilationNeed.cfm(stated);
		Answer<Double> fan = stated.number(Ventilator.class, Ventilator::airflow, CUBIC_FOOT_PER_MINUTE);
		Answer<Boolean> fitted = stated.any(Ventilator.class, ventilator -> Answer.of(ventilator), ventilator -> true);
		Answer<Boolean> largeEnough = Answer.both(need, fan, (n, f) -> IntermittentFan.minutesPerHour(n, f).isPresent());
		return Stated.entry(Stated.and(fitted, largeEnough), () -> new VentilatorRunTime(Answer.both(need, fan,
				(n, f) -> new Quantity(Math.ceil(IntermittentFan.minutesPerHour(n, f).orElseThrow() - 1e-9), MINUTE))));
	}
}
