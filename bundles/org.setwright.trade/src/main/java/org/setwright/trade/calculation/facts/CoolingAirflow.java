package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.CUBIC_FOOT_PER_MINUTE;
import static org.setwright.trade.catalogue.Unit.TON;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;

/** Whether enough air moves over the cooling coil. */
@About(label = "cooling airflow", meaning = "How much air moves over the cooling coil for its capacity: about 350 to 450 cfm per ton is usual.")
public record CoolingAirflow(
		@Calculated(from = { "IndoorUnit.kind", "IndoorUnit.airflow", "OutdoorUnit.coolingCapacityAt95F" },
				formula = "airflow over cooling capacity in tons of 12,000 Btu/h",
				source = "common practice: 400 cfm per ton, about 350 for more drying, up to 450 in dry climates")
		@Asked(label = "per ton", says = "comes to {} per ton", meaning = "Air moved on a cooling call for each ton of cooling.", unit = CUBIC_FOOT_PER_MINUTE, least = 0, most = 15000)
		Answer<Quantity> perTon)
		implements Fact {

	/** @return the airflow of {@code job}; none without a cooling machine or without a fan in ducts */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		Answer<Boolean> cools = stated.any(OutdoorUnit.class, unit -> Answer.of(unit), unit -> true);
		return Stated.entry(Stated.and(cools, movesAir(stated)), () -> computed(stated));
	}

	static Answer<Boolean> movesAir(Stated stated) {
		return stated.any(IndoorUnit.class, IndoorUnit::kind, kind -> switch (kind) {
			case FURNACE, AIR_HANDLER, HYDRONIC_AIR_HANDLER -> true;
			case BOILER, ROOM_HEATER -> false;
		});
	}

	private static CoolingAirflow computed(Stated stated) {
		Answer<Double> airflow = stated.number(IndoorUnit.class, IndoorUnit::airflow, CUBIC_FOOT_PER_MINUTE);
		Answer<Double> tons = stated.number(OutdoorUnit.class, OutdoorUnit::coolingCapacityAt95F, TON);
		return new CoolingAirflow(Stated.quantity(Answer.both(airflow, tons, (a, t) -> a / t), CUBIC_FOOT_PER_MINUTE));
	}
}
