package org.setwright.landing;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.setwright.engine.outcome.Outcome;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Economy;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.Needs;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.wall.Conductor;
import org.setwright.landing.wall.Fit;

/** What a plan is worth, reckoned apart from the program: the smaller the better, the first part before the next. */
record Worth(int left, int change, int doubt, int colour) implements Comparable<Worth> {
	private static final Comparator<Worth> ORDER = Comparator.comparing(Worth::left).thenComparing(Worth::change).thenComparing(Worth::doubt).thenComparing(Worth::colour);

	static Worth of(Outcome outcome) {
		Map<Need, Conductor> landed = LandingPlan.of(outcome).landings().stream().collect(Collectors.toMap(Landing::need, Landing::conductor));
		return of(new SetUp(outcome), Needs.of(outcome), landed);
	}

	static Worth of(SetUp setUp, List<Need> needs, Map<Need, Conductor> landed) {
		boolean heatPump = needs.stream().anyMatch(n -> n.duty() == Duty.CHANGEOVER);
		Worth sum = new Worth(0, 0, 0, 0);
		for (Need need : needs) {
			Conductor conductor = landed.get(need);
			if (conductor == null) {
				int weight = Economy.of(setUp, need, needs).map(e -> Math.min(e.weight(), need.weight())).orElse(need.weight());
				sum = new Worth(sum.left + weight, sum.change, sum.doubt, sum.colour);
			} else {
				Fit fit = Fit.of(conductor, need, heatPump).orElseThrow();
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
