package org.setwright.engine.throughput;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs the same jobs with every contestant, round after round. Within a round they take turns after every few jobs, and
 * another one begins in every round, so that whatever else the machine does meets all of them alike.
 */
final class Contest {
	private static final int TURN = 100;
	private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

	private final List<Contestant> contestants;
	private final int jobs;
	private long result;

	Contest(List<Contestant> contestants, int jobs) {
		this.contestants = contestants;
		this.jobs = jobs;
	}

	/** What one contestant took for all jobs of a round. @param cpu of this thread alone, ns @param wall ns @param bytes allocated */
	record Taken(long cpu, long wall, long bytes) {
		Taken plus(Taken more) {
			return new Taken(cpu + more.cpu, wall + more.wall, bytes + more.bytes);
		}
	}

	/** @return for every round what each contestant took, in their order */
	List<List<Taken>> rounds(int count) {
		List<List<Taken>> rounds = new ArrayList<>();
		for (int r = 0; r < count; r++) {
			rounds.add(round(r));
		}
		if (result == 0) {
			throw new IllegalStateException("no job came to anything");
		}
		return rounds;
	}

	private List<Taken> round(int number) {
		List<Taken> taken = new ArrayList<>(contestants.stream().map(c -> new Taken(0, 0, 0)).toList());
		for (int from = 0; from < jobs; from += TURN) {
			for (int c = 0; c < contestants.size(); c++) {
				int who = (c + number) % contestants.size();
				taken.set(who, taken.get(who).plus(turn(contestants.get(who), from, Math.min(jobs, from + TURN))));
			}
		}
		return taken;
	}

	private Taken turn(Contestant contestant, int from, int to) {
		long bytes = THREADS.getCurrentThreadAllocatedBytes();
		long cpu = THREADS.getCurrentThreadCpuTime();
		long wall = System.nanoTime();
		for (int job = from; job < to; job++) {
			result += contestant.job().applyAsLong(job);
		}
		return new Taken(THREADS.getCurrentThreadCpuTime() - cpu, System.nanoTime() - wall, THREADS.getCurrentThreadAllocatedBytes() - bytes);
	}
}
