package org.setwright.check.cases;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.setwright.book.JobCase;

/** How long jobs took to run, by the clock. It is kept apart from what came of them, which is the same every time. Thread-safe. */
public final class RunTimes {
	private final Map<String, Duration> times = new ConcurrentHashMap<>();

	/** @return what {@code run} gives; how long it took is noted for {@code job} */
	public <T> T measured(JobCase job, Supplier<T> run) {
		long begin = System.nanoTime();
		try {
			return run.get();
		} finally {
			times.put(job.path(), Duration.ofNanos(System.nanoTime() - begin));
		}
	}

	/** @return how long {@code job} took the last time; empty when it was not measured */
	public Optional<Duration> of(JobCase job) {
		return Optional.ofNullable(times.get(job.path()));
	}
}
