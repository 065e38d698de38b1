package org.setwright.engine.synthetic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Value;
import org.setwright.trade.wiring.Wire;

/** Jobs about which all is known, or of which some answers are still to be found out. */
public final class SyntheticJobs {
	private final Random random;
	private final double unknown;

	private SyntheticJobs(long seed, double unknown) {
		random = new Random(seed);
		this.unknown = unknown;
	}

	/** @return {@code count} jobs with every answer known; the same seed gives the same jobs */
	public static List<Job> known(int count, long seed) {
		return withUnknown(count, seed, 0);
	}

	/** @param unknown the share of answers nobody has looked up, from 0 to 1 */
	public static List<Job> withUnknown(int count, long seed, double unknown) {
		SyntheticJobs jobs = new SyntheticJobs(seed, unknown);
		return IntStream.range(0, count).mapToObj(i -> jobs.next()).toList();
	}

	private Job next() {
		Job job = Job.blank();
		for (FactKind kind : Trade.catalogue().kinds()) {
			if (!kind.calculated()) {
				List<Fact> facts = new ArrayList<>();
				for (int i = howMany(kind); i > 0; i--) {
					facts.add(fact(kind));
				}
				job = job.with(kind, Job.Entry.of(facts));
			}
		}
		return job;
	}

	/** Half of what a house may have; from three to eight conductors. */
	private int howMany(FactKind kind) {
		if (kind.type() == Wire.class) {
			return 3 + random.nextInt(6);
		}
		return kind.many() ? random.nextInt(3) : kind.always() ? 1 : random.nextInt(2);
	}

	private Fact fact(FactKind kind) {
		Map<Field, Value> answers = new HashMap<>();
		for (Field field : kind.fields()) {
			if (random.nextDouble() >= unknown) {
				answers.put(field, Answers.any(field.domain(), random));
			}
		}
		return kind.create(answers);
	}
}
