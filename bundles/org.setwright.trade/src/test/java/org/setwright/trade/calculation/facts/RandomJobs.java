package org.setwright.trade.calculation.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/** Jobs with anything the catalogue allows in them, the ends of every range included. */
final class RandomJobs {
	private static final List<String> WORDS = List.of("America/Denver", "America/Phoenix", "Asia/Kolkata", "Norrvik", "Mars/Olympus");

	private final SplittableRandom random;

	RandomJobs(long seed) {
		random = new SplittableRandom(seed);
	}

	/** @return a job in which everything is known: every kind present or absent, every field answered */
	Job known() {
		Job job = Job.blank();
		for (FactKind kind : stated()) {
			job = job.with(kind, kind.always() || random.nextInt(4) > 0 ? Job.Entry.of(facts(kind)) : Job.Entry.NONE);
		}
		return job;
	}

	/** @return {@code job} with some answers forgotten, and of some kinds everything */
	Job forgotten(Job job) {
		Job result = job;
		for (FactKind kind : stated()) {
			if (random.nextInt(8) == 0) {
				result = result.with(kind, Job.Entry.UNKNOWN);
			} else if (random.nextInt(2) == 0) {
				result = result.with(kind, forgotten(kind, result.entry(kind)));
			}
		}
		return result;
	}

	/** @return {@code job} with another answer for {@code field} of every fact of {@code kind} */
	Job changed(Job job, FactKind kind, Field field) {
		List<Fact> facts = job.entry(kind).facts().stream().map(f -> kind.with(f, field, Answer.of(value(field.domain())))).toList();
		return facts.isEmpty() ? job : job.with(kind, Job.Entry.of(facts));
	}

	static List<FactKind> stated() {
		return Trade.catalogue().kinds().stream().filter(k -> !k.calculated()).toList();
	}

	static List<FactKind> calculated() {
		return Trade.catalogue().kinds().stream().filter(FactKind::calculated).toList();
	}

	private Job.Entry forgotten(FactKind kind, Job.Entry entry) {
		return Job.Entry.of(entry.facts().stream().map(fact -> {
			Fact result = fact;
			for (Field field : kind.fields()) {
				if (random.nextInt(3) == 0) {
					result = kind.with(result, field, Answer.unknown());
				}
			}
			return result;
		}).toList());
	}

	private List<Fact> facts(FactKind kind) {
		List<Fact> facts = new ArrayList<>();
		for (int i = kind.many() ? random.nextInt(4) : 0; i >= 0; i--) {
			Map<Field, Value> answers = new HashMap<>();
			kind.fields().forEach(f -> answers.put(f, value(f.domain())));
			facts.add(kind.create(answers));
		}
		return facts;
	}

	private Value value(Domain domain) {
		List<Value> listed = domain.listed();
		if (!listed.isEmpty()) {
			return listed.get(random.nextInt(listed.size()));
		} else if (domain instanceof Domain.Whole whole) {
			return new Value.Count(whole.least() + random.nextInt(whole.most() - whole.least() + 1));
		} else if (domain instanceof Domain.Measure measure) {
			return new Value.Amount(new Quantity(amount(measure.least(), measure.most()), measure.unit()));
		}
		return new Value.Words(WORDS.get(random.nextInt(WORDS.size())));
	}

	/** Mostly the lower part of a range, because ranges end far above what is usual; sometimes an end itself. */
	private double amount(double least, double most) {
		int which = random.nextInt(12);
		double part = random.nextDouble();
		return which == 0 ? least : which == 1 ? most : least + (most - least) * (which < 6 ? part : part * part * part);
	}
}
