package org.setwright.engine;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.running.Program;
import org.setwright.trade.Trade;

/**
 * What reasons cost: every job of the starter book once with them, and once with the same compiled rules without any. One
 * operation is one pass over all jobs.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 12, time = 3)
@Measurement(iterations = 6, time = 3)
@Fork(1)
public class TracingBenchmark {
	private Edition edition;
	private Program program;
	private List<JobCase> jobs;

	/** Compiles the starter book. */
	@Setup
	public void compile() {
		Book book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
		jobs = book.jobs();
		edition = Edition.compile(book, Trade.catalogue()).edition().orElseThrow();
		List<Rule> rules = edition.rules();
		program = Program.compile(rules, FindingOrder.of(rules), Trade.catalogue());
	}

	/** @return the last outcome: fired rules, settled settings, checked by the second evaluator, with all reasons */
	@Benchmark
	public Outcome traced() {
		Outcome last = null;
		for (JobCase job : jobs) {
			last = edition.run(job.job());
		}
		return last;
	}

	/** @return the last job's fired rules: calculated facts and the rule engine, nothing else */
	@Benchmark
	public BitSet untraced() {
		BitSet last = null;
		for (JobCase job : jobs) {
			last = program.fired(new JobFacts(Trade.catalogue().withCalculations(job.job()), Trade.catalogue()));
		}
		return last;
	}
}
