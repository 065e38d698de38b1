package org.setwright.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.Needs;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** What every plan promises, on jobs drawn at random and on every job of the starter book; each failure names its seed. */
class EveryPlanTest {
	private static final int JOBS = 300;
	private static final Set<TerminalMark> COMMON = Set.of(TerminalMark.C);

	@Test
	void everyConductorIsLandedOnceOrUnusedAndEveryNeedIsAnsweredOnce() {
		for (long seed = 1; seed <= JOBS; seed++) {
			Job job = new RandomWalls(seed).job(8);
			var outcome = Plans.EDITION.run(job);
			LandingPlan plan = LandingPlan.of(outcome);
			List<Integer> items = new ArrayList<>(plan.landings().stream().map(l -> l.conductor().item()).toList());
			items.addAll(plan.unused().stream().map(u -> u.conductor().item()).toList());
			assertEquals(job.all(Wire.class).size(), items.size(), "seed " + seed);
			assertEquals(items.size(), new HashSet<>(items).size(), "seed " + seed + ": a conductor is used twice");
			int answered = plan.landings().size() + plan.shared().size() + plan.unserved().stream().mapToInt(u -> u.need().of()).sum();
			assertEquals(Needs.of(outcome).size(), answered, "seed " + seed);
		}
	}

	@Test
	void nothingUnsafeIsEverLanded() {
		int seen = 0;
		for (long seed = 1; seed <= JOBS; seed++) {
			for (Landing landing : plan(new RandomWalls(seed).job(8)).landings()) {
				Wire wire = landing.conductor().wire();
				boolean damaged = wire.condition().value().filter(c -> c != Wire.Condition.SOUND).isPresent();
				assertFalse(damaged, "seed " + seed + ": " + landing);
				boolean sensor = landing.conductor().touches(Set.of(TerminalMark.S1, TerminalMark.S2));
				assertEquals(landing.need().duty().isSensor(), sensor, "seed " + seed + ": " + landing);
				assertFalse(landing.need().duty().isSupply() && landing.conductor().touches(COMMON), "seed " + seed + ": R on what is the common");
				assertFalse(!landing.need().duty().isSupply() && landing.conductor().touches(Conductor.HOT), "seed " + seed + ": a hot conductor on " + landing);
				assertFalse(hot(landing.atWall().to().orElseThrow()) != hot(landing.atEquipment().to().orElseThrow()), "seed " + seed + ": R at one end only");
				seen++;
			}
		}
		assertTrue(seen > JOBS, "only " + seen + " landings were looked at");
	}

	@Test
	void noConductorIsTakenFromWhatTheJobNeedsAndItAloneDoes() {
		int left = 0;
		for (long seed = 1; seed <= JOBS; seed++) {
			LandingPlan plan = plan(new RandomWalls(seed).job(8));
			for (Unserved unserved : plan.unserved()) {
				Need need = unserved.need();
				boolean taken = need.of() == 1 && need.strength() == Need.Strength.NEEDED && plan.landings().stream().map(Landing::conductor)
						.anyMatch(c -> c.control().filter(need.atWall()::contains).isPresent() && c.equipment().filter(need.atEquipment()::contains).isPresent());
				assertFalse(taken, "seed " + seed + ": " + unserved.label() + "\n" + Plans.said(plan));
				left++;
			}
		}
		assertTrue(left > JOBS, "only " + left + " needs were left");
	}

	@Test
	void theOrderInWhichConductorsAreWrittenDoesNotMatter() {
		for (long seed = 1; seed <= JOBS; seed++) {
			RandomWalls walls = new RandomWalls(seed);
			Job job = walls.job(8);
			assertEquals(byContent(plan(job)), byContent(plan(walls.shuffled(job))), "seed " + seed);
		}
	}

	@Test
	void oneMoreSoundSpareNeverMakesAPlanWorse() {
		for (long seed = 1; seed <= JOBS; seed++) {
			Job job = new RandomWalls(seed).job(7);
			List<Fact> more = new ArrayList<>(job.all(Wire.class));
			more.add(new Wire(Answer.of(Wire.Colour.PURPLE), Answer.of(TerminalMark.NOT_LANDED), Answer.of(TerminalMark.NOT_LANDED), Answer.unknown(), Answer.unknown(),
					Answer.of(Wire.Condition.SOUND)));
			Worth before = Worth.of(Plans.EDITION.run(job));
			Worth after = Worth.of(Plans.EDITION.run(RandomWalls.with(job, more)));
			assertTrue(after.compareTo(before) <= 0, "seed " + seed + ": " + before + " became " + after);
		}
	}

	@Test
	void noPlanIsBetterThanTheOneMade() {
		int compared = 0;
		for (long seed = 1; seed <= JOBS; seed++) {
			var outcome = Plans.EDITION.run(new RandomWalls(seed).job(5));
			Worth best = AllWays.best(outcome);
			assertEquals(best, Worth.of(outcome), "seed " + seed + "\n" + Plans.said(LandingPlan.of(outcome)));
			compared += best.left() > 0 ? 1 : 0;
		}
		assertTrue(compared > JOBS / 4, "conductors were short in only " + compared + " jobs");
	}

	@TestFactory
	Stream<DynamicTest> everyLandingOfTheStarterBookHasAReasonAndASource() {
		return Plans.STARTER.jobs().stream().map(job -> DynamicTest.dynamicTest(job.name(), () -> {
			LandingPlan plan = plan(job.job());
			plan.landings().forEach(l -> said(l.need().because(), l.choice(), l.source()));
			plan.shared().forEach(s -> said(s.need().because(), s.economy().how(), s.economy().loses(), s.economy().source()));
			plan.unused().forEach(u -> said(u.doThis(), u.because(), u.source()));
			plan.unserved().forEach(u -> {
				said(u.because(), u.source());
				assertFalse(u.remedies().isEmpty(), u.label());
				u.remedies().forEach(r -> said(r.sentence(), r.source()));
			});
			plan.stops().forEach(s -> said(s.sentence(), s.source()));
			assertEquals(plan.stops().isEmpty() ? job.job().all(Wire.class).size() : 0, plan.landings().size() + plan.unused().size());
		}));
	}

	private static void said(String... words) {
		for (String word : words) {
			assertFalse(word.isBlank());
		}
	}

	private static LandingPlan plan(Job job) {
		return LandingPlan.of(Plans.EDITION.run(job));
	}

	private static boolean hot(TerminalMark mark) {
		return Conductor.HOT.contains(mark);
	}

	/** Landings by what is known of the conductor, not by its number: two alike may change places. */
	private static List<String> byContent(LandingPlan plan) {
		List<String> lines = new ArrayList<>(plan.landings().stream().map(l -> l.conductor().wire() + Plans.said(l)).toList());
		plan.shared().forEach(s -> lines.add(s.need().label() + s.conductor().wire()));
		lines.addAll(plan.unused().stream().map(u -> u.conductor().wire() + u.doThis()).sorted().toList());
		plan.unserved().forEach(u -> lines.add(u.label()));
		return lines;
	}
}
