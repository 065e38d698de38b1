package org.setwright.engine.throughput;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.engine.Edition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.synthetic.SyntheticBook;
import org.setwright.engine.synthetic.SyntheticJobs;
import org.setwright.engine.throughput.Contest.Taken;
import org.setwright.trade.catalogue.Job;

/**
 * Prints jobs per second, as ratios in one run. First all have to agree on which rules fire on every job. The opponents get
 * their facts ready made; our run starts from the job as it is read, works out the calculated facts, and settles and
 * explains. Run only when asked for, see DEVELOPERS.md.
 */
class ThroughputTest {
	private static final int RULES = Integer.getInteger("bench.rules", 300);
	private static final int JOBS = Integer.getInteger("bench.jobs", 10_000);
	private static final int WARM_UP = Integer.getInteger("bench.warm", 1);
	private static final int ROUNDS = Integer.getInteger("bench.rounds", 7);
	private static final long SEED = Long.getLong("bench.seed", 20261127);

	@TempDir(cleanup = CleanupMode.ALWAYS)
	Path folder;

	private final Edition edition = Edition.compile(SyntheticBook.of(RULES, SEED)).edition().orElseThrow();
	private final List<Job> jobs = SyntheticJobs.known(JOBS, SEED);
	private final Map<String, Integer> numbers = new HashMap<>();

	@Test
	void runAndReport() throws ReflectiveOperationException, IOException {
		List<Rule> rules = edition.rules();
		for (Rule rule : rules) {
			numbers.put(rule.name(), numbers.size());
		}
		Map<String, String> sources = PlainClasses.sources();
		sources.put(HandWritten.NAME, HandWritten.source(rules, FindingOrder.of(rules)));
		ClassLoader classes = Compiled.in(folder, sources);
		PlainSites sites = new PlainSites(classes);
		List<PlainSites.Plain> plain = jobs.stream().map(sites::of).toList();
		PlainDrools drools = new PlainDrools(rules, classes);
		Function<Object, BitSet> written = written(classes);
		agree(plain, drools, written);
		report(List.of(new Contestant("our run", i -> edition.run(jobs.get(i)).settings().size()),
				new Contestant("our run, all reasons read", i -> Reading.all(edition.run(jobs.get(i)))),
				new Contestant("plain Drools, a session per job", i -> drools.fired(plain.get(i).facts()).cardinality()),
				new Contestant("Java written for these rules", i -> written.apply(plain.get(i).site()).cardinality())));
	}

	@SuppressWarnings("unchecked")
	private static Function<Object, BitSet> written(ClassLoader classes) throws ReflectiveOperationException {
		return (Function<Object, BitSet>) classes.loadClass(PlainClasses.PACKAGE + "." + HandWritten.NAME).getConstructor().newInstance();
	}

	private void agree(List<PlainSites.Plain> plain, PlainDrools drools, Function<Object, BitSet> written) {
		long fired = 0;
		BitSet ever = new BitSet();
		for (int i = 0; i < jobs.size(); i++) {
			BitSet ours = fired(edition.run(jobs.get(i)));
			String job = "job " + i;
			assertEquals(ours, drools.fired(plain.get(i).facts()), () -> job + ": plain Drools differs");
			assertEquals(ours, written.apply(plain.get(i).site()), () -> job + ": the Java written for these rules differs");
			fired += ours.cardinality();
			ever.or(ours);
		}
		assertTrue(fired > 0 && ever.cardinality() > RULES / 2, "the sample is dense");
		System.out.printf(Locale.ROOT, "%d rules x %d jobs: all agree; on average %.1f rules fire, %d fire on some job%n", RULES, JOBS,
				fired / (double) jobs.size(), ever.cardinality());
	}

	private BitSet fired(Outcome outcome) {
		assertTrue(outcome.heldOpen().isEmpty(), "all is known");
		BitSet fired = new BitSet();
		outcome.firings().forEach(f -> fired.set(numbers.get(f.rule().name())));
		return fired;
	}

	private void report(List<Contestant> contestants) {
		Contest contest = new Contest(contestants, jobs.size());
		contest.rounds(WARM_UP);
		List<List<Taken>> rounds = contest.rounds(ROUNDS);
		System.out.printf("median of %d rounds (least to most)%n", ROUNDS);
		for (int c = 0; c < contestants.size(); c++) {
			System.out.printf(Locale.ROOT, "  %-32s %s cases/s of processor time, %s of the clock, %s kB a case%n", contestants.get(c).name(),
					perSecond(rounds, c, Taken::cpu), perSecond(rounds, c, Taken::wall), figures(rounds, c, t -> t.bytes() / 1000.0 / jobs.size()).text("%.0f"));
		}
		for (int c = 1; c < contestants.size(); c++) {
			System.out.printf(Locale.ROOT, "  our run takes x times as long as %-32s x = %s of processor time, %s of the clock%n", contestants.get(c).name(),
					ratio(rounds, c, Taken::cpu), ratio(rounds, c, Taken::wall));
		}
	}

	private String perSecond(List<List<Taken>> rounds, int who, ToDoubleFunction<Taken> time) {
		return figures(rounds, who, t -> jobs.size() * 1e9 / time.applyAsDouble(t)).text("%.0f");
	}

	private static Spread figures(List<List<Taken>> rounds, int who, ToDoubleFunction<Taken> figure) {
		return Spread.of(rounds.stream().mapToDouble(r -> figure.applyAsDouble(r.get(who))));
	}

	private static String ratio(List<List<Taken>> rounds, int other, ToDoubleFunction<Taken> time) {
		return Spread.of(rounds.stream().mapToDouble(r -> time.applyAsDouble(r.get(0)) / time.applyAsDouble(r.get(other)))).text("%.2f");
	}
}
