package org.setwright.landing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** Draws jobs at random: common equipment, and walls in any state from tidy to hopeless. */
final class RandomWalls {
	private static final List<String> MACHINES = List.of("""
			outdoor unit: { kind: air conditioner, stages: 1 }
			indoor unit: { kind: furnace, fuel: natural gas, stages: 2, fan run by: equipment }
			wishes: { fan between calls: rests }
			""", """
			outdoor unit: { kind: air-source heat pump, stages: 1, valve energised in: cooling }
			indoor unit: { kind: air handler, fuel: electric, stages: 2 }
			auxiliary heat: { kind: electric elements, stages: 2, emergency relay: yes }
			""", """
			indoor unit: { kind: boiler, fuel: oil, stages: 1 }
			outdoor sensor: { connection: wired }
			""", """
			indoor unit: { kind: furnace, fuel: propane, stages: 1 }
			humidifier: { kind: bypass, controlled by: controller, powered by: own transformer }
			ventilator: { kind: exhaust fan, controlled by: controller, powered by: equipment transformer, airflow: 90 cfm }
			""");
	private static final List<String> POWERS = List.of("common conductor", "batteries", "common or batteries");
	private static final List<TerminalMark> MARKS = List.of(TerminalMark.R, TerminalMark.C, TerminalMark.W, TerminalMark.W2, TerminalMark.Y, TerminalMark.Y2, TerminalMark.G, TerminalMark.O,
			TerminalMark.B, TerminalMark.X, TerminalMark.S1, TerminalMark.S2, TerminalMark.NOT_LANDED, TerminalMark.NOT_LANDED, TerminalMark.NOT_LANDED);

	private final Random random;

	RandomWalls(long seed) {
		random = new Random(seed);
	}

	/** @param most conductors, at most */
	Job job(int most) {
		String machines = MACHINES.get(random.nextInt(MACHINES.size()));
		Job job = Plans.job("site power: { voltage: 24 V }\ntransformers: [heating and cooling]\ncontroller: { power: " + POWERS.get(random.nextInt(POWERS.size()))
				+ ", separate supplies: no, runs heat pumps: yes, ventilation output: yes, humidity output: yes }\n" + machines + "not fitted: everything else\n");
		List<Fact> wires = new ArrayList<>();
		for (int i = random.nextInt(most + 1); i > 0; i--) {
			wires.add(wire());
		}
		return with(job, wires);
	}

	/** @return {@code job} with its conductors in another order */
	Job shuffled(Job job) {
		List<Fact> wires = new ArrayList<>(job.all(Wire.class));
		Collections.shuffle(wires, random);
		return with(job, wires);
	}

	static Job with(Job job, List<Fact> wires) {
		return job.with(Trade.catalogue().kind(Wire.class), Job.Entry.of(wires));
	}

	private Wire wire() {
		TerminalMark mark = MARKS.get(random.nextInt(MARKS.size()));
		TerminalMark other = random.nextInt(6) == 0 ? MARKS.get(random.nextInt(MARKS.size())) : mark;
		return new Wire(one(List.of(Wire.Colour.values()), 12), one(List.of(mark), 8), one(List.of(other), 6), random.nextInt(4) > 0 ? Answer.unknown() : gauge(), Answer.unknown(),
				one(List.of(Wire.Condition.SOUND, Wire.Condition.SOUND, Wire.Condition.SOUND, Wire.Condition.BROKEN, Wire.Condition.SHORTED), 3));
	}

	private Answer<Quantity> gauge() {
		return Answer.of(new Quantity(random.nextBoolean() ? 18 : 14, Unit.AWG));
	}

	private <T> Answer<T> one(List<T> all, int unknownOnceIn) {
		return random.nextInt(unknownOnceIn) == 0 ? Answer.unknown() : Answer.of(all.get(random.nextInt(all.size())));
	}
}
