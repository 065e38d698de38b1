package org.setwright.landing;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setwright.engine.outcome.Outcome;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.Needs;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.wall.Conductor;
import org.setwright.landing.wall.Fit;
import org.setwright.trade.wiring.Wire;

/** What a plan is worth, reckoned apart from the program: the smaller the better, the first part before the next. */
record Worth(int left, int change, int doubt, int colour) implements Comparable<Worth> {
	private static final Comparator<Worth> ORDER = Comparator.comparing(Worth::left).thenComparing(Worth::change).thenComparing(Worth::doubt).thenComparing(Worth::colour);

	static Worth of(Outcome outcome) {
		Map<Need, Conductor> landed = LandingPlan.of(outcome).landings().stream().collect(Collectors.toMap(Landing::need, Landing::conductor));
		return of(costs(outcome), Needs.of(outcome), landed);
	}

	static Costs costs(Outcome outcome) {
		List<Wire> wires = outcome.job().all(Wire.class);
		return new Costs(new SetUp(outcome), Needs.of(outcome), IntStream.range(0, wires.size()).mapToObj(i -> new Conductor(i, wires.get(i))).toList());
	}

	static Worth of(Costs costs, List<Need> needs, Map<Need, Conductor> landed) {
		Worth sum = new Worth(0, 0, 0, 0);
		for (Need need : needs) {
			Conductor conductor = landed.get(need);
			if (conductor == null) {
				sum = new Worth(sum.left + costs.without(need), sum.change, sum.doubt, sum.colour);
			} else {
				Fit fit = costs.fit(need, conductor).orElseThrow();
				sum = new Worth(sum.left, sum.change + fit.change(), sum.doubt + fit.doubt(), sum.colour + fit.colour());
			}
		}
		return sum;
	}

	@Override
	public int compareTo(Worth other) {
		return ORDER.compare(this, other);
	}
}
