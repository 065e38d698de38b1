package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.engine.change.Alternative;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.change.Change;
import org.setwright.engine.change.Watch;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** On small random books the changes found are compared with a search through every job there is. */
class SmallestChangeTest {
	private static final List<String> FIELDS = List.of("OutdoorUnit.stages", "OutdoorUnit.variableSpeed", "Humidifier.controlledBy",
			"OutdoorSensor.shaded", "OutdoorSensor.connection", "Building.carbonMonoxideAlarm", "Transformer.feeds");
	private static final int MOST = 3;
	private static final Setting COOL_STAGES = Trade.catalogue().setting("COOL_STAGES").orElseThrow();
	private static final Value TWO = new Value.Count(2);

	private static final Map<Integer, Integer> QUESTIONS = new TreeMap<>();

	@AfterAll
	static void theQuestionsWereHardEnough() {
		assertTrue(QUESTIONS.getOrDefault(1, 0) > 10 && QUESTIONS.getOrDefault(2, 0) > 5 && QUESTIONS.getOrDefault(MOST, 0) > 0,
				() -> "questions by size of the smallest change: " + QUESTIONS);
	}

	@ParameterizedTest(name = "seed {0}")
	@ValueSource(longs = { 3, 4, 5, 6, 7, 8, 9, 10 })
	void noSmallerChangeExistsAndNoneOfThatSizeIsMissed(long seed) {
		Random random = new Random(seed);
		Edition edition = Books.edition(rules(random));
		Job job = job(random);
		Inquiry inquiry = edition.about(job);
		Map<EveryChange.Changed, Outcome> all = new HashMap<>();
		EveryChange.over(Trade.catalogue(), FIELDS).of(job, MOST).forEach(c -> all.put(c, edition.run(c.job())));
		assertTrue(all.size() > 500, () -> "only " + all.size() + " jobs");
		for (Rule rule : edition.rules()) {
			compare(seed + ": " + rule.text(), job, inquiry.toFire(rule, Watch.PATIENT), all, o -> o.firings().stream().anyMatch(f -> f.rule() == rule));
		}
		compare(seed + ": two stages", job, inquiry.toSettle(COOL_STAGES, TWO, Watch.PATIENT), all, SmallestChangeTest::isTwo);
	}

	private static boolean isTwo(Outcome outcome) {
		return outcome.setting(COOL_STAGES).flatMap(SettingOutcome::value).filter(TWO::same).isPresent();
	}

	private static void compare(String what, Job job, Alternatives found, Map<EveryChange.Changed, Outcome> all, Predicate<Outcome> goal) {
		Set<Set<JobField>> reaching = all.entrySet().stream().filter(e -> goal.test(e.getValue())).map(e -> e.getKey().places()).collect(Collectors.toSet());
		if (reaching.contains(Set.of())) {
			assertEquals(Alternatives.NONE_NEEDED, found, what);
			return;
		}
		int smallest = reaching.stream().mapToInt(Set::size).min().orElse(MOST + 1);
		QUESTIONS.merge(smallest, 1, Integer::sum);
		Set<Set<JobField>> expected = reaching.stream().filter(p -> p.size() == smallest).collect(Collectors.toSet());
		Set<Set<JobField>> got = new HashSet<>();
		found.found().stream().filter(a -> a.changes().size() == smallest).forEach(a -> got.add(places(a)));
		assertTrue(found.whole(), what);
		assertTrue(found.found().stream().allMatch(a -> a.changes().size() >= smallest), what + ": smaller than anything that works: " + found);
		if (found.found().size() < 6 && smallest <= MOST) {
			assertEquals(expected, got, what);
		}
		assertTrue(expected.containsAll(got), what);
		int onSite = all.entrySet().stream().filter(e -> e.getKey().onSite() && goal.test(e.getValue())).mapToInt(e -> e.getKey().places().size())
				.min().orElse(MOST + 1);
		int first = found.found().stream().filter(Alternative::onSite).findFirst().map(a -> a.changes().size()).orElse(MOST + 1);
		assertEquals(onSite, Math.min(first, MOST + 1), what + ": smallest on site");
	}

	private static Set<JobField> places(Alternative alternative) {
		return alternative.changes().stream().map(Change::place).collect(Collectors.toSet());
	}

	private static String rules(Random random) {
		StringBuilder rules = new StringBuilder();
		for (int i = 0; i < 7; i++) {
			StringBuilder when = new StringBuilder();
			for (int c = 0; c <= random.nextInt(3); c++) {
				when.append(condition(random, i)).append("\n\t");
			}
			String then = i == 0 ? "find( F );" : i == 1 ? "find( G );" : "propose( COOL_STAGES, " + (1 + random.nextInt(2)) + " );";
			rules.append(Books.rule("r" + i, List.of("shop practice", "maker's instructions", "code or safety").get(random.nextInt(3)), when.toString(), then));
		}
		return rules.toString();
	}

	private static String condition(Random random, int rule) {
		int pick = random.nextInt(9);
		if (pick == 0 && rule > 1) {
			return (random.nextBoolean() ? "not " : "") + "Finding( name == " + (random.nextBoolean() ? "F" : "G") + " )";
		}
		return switch (pick) {
			case 1 -> "not " + pattern(random);
			case 2 -> "exists " + pattern(random);
			case 3 -> "( " + pattern(random) + " or " + pattern(random) + " )";
			case 4 -> "not ( " + pattern(random) + " and " + pattern(random) + " )";
			default -> pattern(random);
		};
	}

	private static String pattern(Random random) {
		String[] names = FIELDS.get(random.nextInt(FIELDS.size())).split("\\.");
		FactKind kind = Trade.catalogue().kind(names[0]).orElseThrow();
		Field field = kind.field(names[1]).orElseThrow();
		List<Value> values = field.domain().listed();
		Value value = values.get(random.nextInt(values.size()));
		String literal = value instanceof Value.Flag flag ? flag.yes() ? "YES" : "NO" : value.plain().toString();
		String test = switch (random.nextInt(6)) {
			case 0 -> "";
			case 1 -> field.name() + " != " + literal;
			default -> field.name() + " == " + literal;
		};
		return kind.name() + "( " + test + " )";
	}

	private static Job job(Random random) {
		Job job = Job.blank();
		for (String kindName : List.of("OutdoorUnit", "Humidifier", "OutdoorSensor", "Building", "Transformer")) {
			FactKind kind = Trade.catalogue().kind(kindName).orElseThrow();
			int presence = random.nextInt(3);
			if (presence == 0 && !kind.always()) {
				job = job.with(kind, Job.Entry.NONE);
			} else if (presence > 0) {
				List<Fact> facts = new ArrayList<>();
				for (int i = 0; i < (kind.many() ? 2 : 1); i++) {
					facts.add(fact(kind, random));
				}
				job = job.with(kind, Job.Entry.of(facts));
			}
		}
		return job;
	}

	private static Fact fact(FactKind kind, Random random) {
		Fact fact = kind.create(Map.of());
		for (String name : FIELDS) {
			if (name.startsWith(kind.name() + ".") && random.nextInt(3) > 0) {
				Field field = kind.field(name.split("\\.")[1]).orElseThrow();
				List<Value> values = field.domain().listed();
				fact = kind.with(fact, field, Answer.of(values.get(random.nextInt(values.size()))));
			}
		}
		return fact;
	}
}
