package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collection;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Starts the benchmarks; run only when asked for, see DEVELOPERS.md. */
class BenchmarksTest {
	@Test
	void runAndReport() throws RunnerException {
		Collection<RunResult> results = new Runner(new OptionsBuilder().include(TracingBenchmark.class.getName()).build()).run();
		assertEquals(2, results.size());
		double traced = score(results, "traced");
		double untraced = score(results, "untraced");
		System.out.printf("with reasons %.1f ms, without %.1f ms, ratio %.2f%n", traced, untraced, traced / untraced);
	}

	private static double score(Collection<RunResult> results, String name) {
		return results.stream().filter(r -> r.getPrimaryResult().getLabel().equals(name)).findFirst().orElseThrow().getPrimaryResult().getScore();
	}
}
