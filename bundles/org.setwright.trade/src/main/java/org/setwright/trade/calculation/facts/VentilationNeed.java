package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.CUBIC_FOOT_PER_MINUTE;
import static org.setwright.trade.catalogue.Unit.SQUARE_FOOT;

import org.setwright.trade.calculation.ventilation.VentilationStandard;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.house.Building;

/** How much outdoor air the house needs by the rule in force. */
@About(label = "ventilation need", meaning = "How much outdoor air the house needs, by the rule that is in force there.", always = true)
public record VentilationNeed(
		@Calculated(from = { "Building.ventilationRule", "Building.floorArea", "Building.bedrooms" },
				formula = "0.03 cfm (ASHRAE 62.2) or 0.01 cfm (IRC or IMC) for each square foot, and 7.5 cfm for each bedroom and one more",
				source = "ASHRAE 62.2-2013 and later, equation 4.1; International Mechanical Code equation 4-9")
		@Asked(label = "airflow needed", says = "comes to {}", meaning = "Outdoor air the house needs on average.", unit = CUBIC_FOOT_PER_MINUTE, least = 0, most = 1000)
		Answer<Quantity> airflowNeeded)
		implements Fact {

	/** @return the need of {@code job}, unknown while the rule in force is: it is never guessed */
	public static VentilationNeed of(Job job) {
		return new VentilationNeed(Stated.quantity(cfm(new Stated(job)), CUBIC_FOOT_PER_MINUTE));
	}

	static Answer<Double> cfm(Stated stated) {
		Answer<Double> area = stated.number(Building.class, Building::floorArea, SQUARE_FOOT);
		Answer<Integer> bedrooms = stated.answer(Building.class, Building::bedrooms);
		return stated.answer(Building.class, Building::ventilationRule).map(VentilationNeed::standard)
				.then(standard -> Answer.both(area, bedrooms, standard::cfm));
	}

	private static VentilationStandard standard(Building.VentilationRule rule) {
		return switch (rule) {
			case ASHRAE_62_2 -> VentilationStandard.ASHRAE_62_2_EQUATION;
			case IRC_OR_IMC -> VentilationStandard.RESIDENTIAL_CODE;
		};
	}
}
