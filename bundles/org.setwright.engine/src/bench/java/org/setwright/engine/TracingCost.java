package org.setwright.engine;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.running.Program;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/**
 * What reasons cost. In every round each job of the starter book is run without tracing (the same compiled rules, only which
 * of them fire), with tracing (settled and checked by the second evaluator, reasons kept), and with tracing and every reason,
 * start-up check and thing to find out put into words. The ways take turns within a round, and what counts is the processor
 * time of the thread, so that other work on the machine weighs on all three alike.
 */
public final class TracingCost {
	private static final int WARM_UP = 60;
	private static final int ROUNDS = 41;
	private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

	private final Catalogue catalogue = Trade.catalogue();
	private final Edition edition;
	private final Program program;
	private final List<JobCase> jobs;

	private TracingCost() {
		Book book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), catalogue);
		jobs = book.jobs();
		edition = Edition.compile(book).edition().orElseThrow();
		List<Rule> rules = edition.rules();
		program = Program.compile(rules, FindingOrder.of(rules), catalogue);
	}

	/** What one way of running costs. @param passes processor time of each pass over all jobs, in nanoseconds */
	record Cost(String name, long[] passes) {
		/** @return how many times as dear as {@code other}, round by round: lower quartile, median, upper quartile */
		double[] over(Cost other) {
			double[] ratios = new double[passes.length];
			Arrays.setAll(ratios, i -> (double) passes[i] / other.passes[i]);
			Arrays.sort(ratios);
			return new double[] { ratios[ratios.length / 4], ratios[ratios.length / 2], ratios[ratios.length * 3 / 4] };
		}

		/** @return the median pass */
		long median() {
			long[] sorted = passes.clone();
			Arrays.sort(sorted);
			return sorted[sorted.length / 2];
		}
	}

	/** Measures and prints, one line for each way. @return the costs, the untraced first */
	static List<Cost> measure() {
		TracingCost cost = new TracingCost();
		List<ToIntFunction<JobCase>> ways = List.of(cost::untraced, cost::traced, cost::told);
		List<Cost> costs = List.of(new Cost("without tracing", new long[ROUNDS]), new Cost("with tracing", new long[ROUNDS]),
				new Cost("and every reason in words", new long[ROUNDS]));
		List<Integer> checks = new ArrayList<>();
		for (int round = -WARM_UP; round < ROUNDS; round++) {
			for (int way = 0; way < ways.size(); way++) {
				long start = CLOCK.getCurrentThreadCpuTime();
				int check = cost.jobs.stream().mapToInt(ways.get(way)).sum();
				long spent = CLOCK.getCurrentThreadCpuTime() - start;
				checks.add(check);
				if (round >= 0) {
					costs.get(way).passes[round] = spent;
				}
			}
		}
		for (int i = 0; i < checks.size(); i++) {
			if (!checks.get(i).equals(checks.get(i % ways.size()))) {
				throw new IllegalStateException("a way came to something else in another round");
			}
		}
		for (Cost each : costs) {
			double[] ratio = each.over(costs.get(0));
			System.out.printf("%-27s %8.0f us per job   ratio %.2f (%.2f to %.2f)%n", each.name, each.median() / 1000.0 / cost.jobs.size(),
					ratio[1], ratio[0], ratio[2]);
		}
		return costs;
	}

	private int untraced(JobCase job) {
		return program.fired(new JobFacts(catalogue.withCalculations(job.job()), catalogue)).cardinality();
	}

	private int traced(JobCase job) {
		return edition.run(job.job()).settings().size();
	}

	private int told(JobCase job) {
		Outcome outcome = edition.run(job.job());
		return outcome.firings().stream().flatMap(f -> f.reasons().stream()).map(Reason::sentence).mapToInt(String::length).sum()
				+ outcome.startUp().size() + outcome.toFindOut().size();
	}

	public static void main(String[] arguments) {
		measure();
	}
}
