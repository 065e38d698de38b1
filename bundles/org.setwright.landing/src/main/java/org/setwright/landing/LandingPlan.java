package org.setwright.landing;

import java.util.List;
import org.setwright.engine.outcome.Outcome;
import org.setwright.landing.need.Check;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Shared;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.plan.Warning;

/**
 * What is landed where on one job. Every conductor at the wall is in {@code landings} or {@code unused}, once; every
 * conductor the job needs is in {@code landings}, {@code shared} or {@code unserved}, once (a pair without conductors
 * stands once for both). Where a hard stop stands, there is no plan at all. Immutable.
 *
 * @param stops what forbids any landing; when not empty, all lists but {@code cautions} are empty
 * @param landings the most important duty first
 * @param shared what does without a conductor of its own, as a rule of the book allows
 * @param unused conductors to cap or to leave alone, in the order of the job's list
 * @param unserved what no conductor serves, the most important first, with remedies
 * @param toFindOut what the plan as a whole takes for granted until somebody looks
 * @param cautions what to heed while doing it
 */
public record LandingPlan(List<Warning> stops, List<Landing> landings, List<Shared> shared, List<Unused> unused,
		List<Unserved> unserved, List<Check> toFindOut, List<Warning> cautions) {
	public LandingPlan {
		stops = List.copyOf(stops);
		landings = List.copyOf(landings);
		shared = List.copyOf(shared);
		unused = List.copyOf(unused);
		unserved = List.copyOf(unserved);
		toFindOut = List.copyOf(toFindOut);
		cautions = List.copyOf(cautions);
	}

	/**
	 * Works out the plan of a job; takes milliseconds.
	 *
	 * @param outcome what the job came to, under the trade's own catalogue
	 */
	public static LandingPlan of(Outcome outcome) {
		return new Planner(outcome).plan();
	}
}
