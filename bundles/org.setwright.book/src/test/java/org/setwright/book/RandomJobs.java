package org.setwright.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** Makes jobs and edits at random, the same for the same seed. */
final class RandomJobs {
	static final String PATH = "jobs/random.yaml";
	private static final List<String> WORDS = List.of("Norrvik", "Oskelund Air", "a: b", "x #1", "{ odd }", "it's \"so\"", "- dash",
			"tick ✓ 𝛑", "1", "yes", "none", "null", "O'Dell, Ltd", "*star", "&and", "!bang", "%pc", "@at", "`tick`", "end:", "? q", "|", ">", "#", "~");
	private static final List<String> NOTES = List.of("", "one line", "two\nlines", "tight: yes # no\n\n  indented\nlast", "  leading", "\ttab",
			"a long line of # words that: goes on and on, past the end of the paper, and over its edge, until it has to be folded at last");
	final Random random;
	final Catalogue catalogue;

	RandomJobs(long seed, Catalogue catalogue) {
		random = new Random(seed);
		this.catalogue = catalogue;
	}

	JobCase job() {
		Job job = Job.blank();
		for (FactKind kind : stated()) {
			int presence = random.nextInt(4);
			if (presence == 1 && !kind.always()) {
				job = job.with(kind, Job.Entry.NONE);
			} else if (presence > 1) {
				List<Fact> facts = new ArrayList<>();
				for (int i = kind.many() ? random.nextInt(3) : 0; i >= 0; i--) {
					facts.add(fact(kind));
				}
				job = job.with(kind, Job.Entry.of(facts));
			}
		}
		Map<Setting, JobCase.Expectation> expected = new LinkedHashMap<>();
		for (int i = random.nextInt(4); i > 0; i--) {
			Setting setting = pick(List.copyOf(catalogue.settings()));
			expected.put(setting, expectation(setting));
		}
		RandomExpectations more = new RandomExpectations(this);
		return new JobCase(PATH, name(), pick(NOTES), job, expected, more.items(), more.accepted(), Map.of());
	}

	List<FactKind> stated() {
		return catalogue.kinds().stream().filter(k -> !k.calculated()).toList();
	}

	private String name() {
		return "Job " + random.nextInt(100) + (random.nextBoolean() ? "" : pick(List.of(", upstairs", ": attic", " #2", " [b]", "'s")));
	}

	private Fact fact(FactKind kind) {
		Map<Field, Value> known = new HashMap<>();
		asked(kind).stream().filter(f -> random.nextBoolean()).forEach(f -> known.put(f, value(f.domain())));
		return kind.create(known);
	}

	static List<Field> asked(FactKind kind) {
		return kind.fields().stream().filter(f -> f.calculation().isEmpty()).toList();
	}

	JobCase.Expectation expectation(Setting setting) {
		Position anywhere = Position.whole(PATH);
		return switch (random.nextInt(9)) {
			case 6 -> new JobCase.NotSet(anywhere);
			case 7, 8 -> new RandomExpectations(this).particular(setting, new JobCase.Settled(value(setting.domain()), anywhere));
			case 0 -> new JobCase.Gap(anywhere);
			case 1 -> new JobCase.Dispute(anywhere);
			case 2 -> new JobCase.NotNeeded(anywhere);
			default -> new JobCase.Settled(value(setting.domain()), anywhere);
		};
	}

	Value value(Domain domain) {
		if (domain instanceof Domain.Whole whole) {
			return new Value.Count(whole.least() + random.nextInt(Math.min(1000, whole.most() - whole.least() + 1)));
		} else if (domain instanceof Domain.Measure measure) {
			double span = measure.most() - measure.least();
			double number = Math.rint((measure.least() + random.nextDouble() * span) * 10) / 10 + 0.0;
			List<Unit> units = Unit.measuring(measure.unit().dimension());
			Value.Amount inAnother = new Value.Amount(new Quantity(Math.rint(new Quantity(number, measure.unit()).in(pick(units)) * 100) / 100, units.get(0)));
			Value.Amount plain = new Value.Amount(new Quantity(Math.max(measure.least(), Math.min(measure.most(), number)), measure.unit()));
			return domain.read(inAnother.text()).isPresent() ? inAnother : plain;
		} else if (domain instanceof Domain.Words) {
			return new Value.Words(pick(WORDS));
		}
		return pick(domain.listed());
	}

	/** An edit that makes sense for {@code job}. */
	JobEdit edit(JobCase job) {
		FactKind kind = pick(stated());
		int facts = job.job().entry(kind).facts().size();
		return switch (random.nextInt(12)) {
			case 10, 11 -> new RandomExpectations(this).edit(job);
			case 0 -> new JobEdit.Named(name());
			case 1 -> new JobEdit.Noted(pick(NOTES));
			case 2 -> expect();
			case 3 -> job.expected().isEmpty() ? expect() : new JobEdit.NotExpected(pick(job.expected().keySet()));
			case 4 -> presence(kind);
			case 5 -> kind.many() ? new JobEdit.Added(kind) : presence(kind);
			case 6 -> kind.many() && facts > 1 ? new JobEdit.Removed(kind, random.nextInt(facts)) : presence(kind);
			default -> answer(kind, facts);
		};
	}

	private JobEdit expect() {
		Setting setting = pick(List.copyOf(catalogue.settings()));
		return new JobEdit.Expected(setting, expectation(setting));
	}

	private JobEdit presence(FactKind kind) {
		Job.Presence presence = pick(List.of(Job.Presence.values()));
		return new JobEdit.Fitted(kind, presence == Job.Presence.NONE && kind.always() ? Job.Presence.UNKNOWN : presence);
	}

	private JobEdit answer(FactKind kind, int facts) {
		Field field = pick(asked(kind));
		Answer<Value> answer = random.nextInt(4) == 0 ? Answer.unknown() : Answer.of(value(field.domain()));
		return new JobEdit.Answered(JobField.of(kind, kind.many() ? random.nextInt(facts + 1) : 0, field), answer);
	}

	<T> T pick(Collection<T> from) {
		return List.copyOf(from).get(random.nextInt(from.size()));
	}
}
