package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.Job;

/** The rule engine and the independent evaluator come to the same result; a run throws when they do not. */
class AgreementTest {
	private static final int BOOKS = 6;
	private static final int JOBS = 50;

	@ParameterizedTest
	@ValueSource(longs = { 1, 20261125, 77 })
	void onRandomBooksAndJobs(long seed) {
		long fired = 0;
		long heldOpen = 0;
		long checks = 0;
		for (int i = 0; i < BOOKS; i++) {
			RandomBooks random = new RandomBooks(seed * 1000 + i);
			String rules = random.rules(15);
			Edition edition = Books.edition(rules);
			for (int j = 0; j < JOBS; j++) {
				Job job = random.job();
				try {
					Outcome outcome = edition.run(job);
					fired += outcome.firings().size();
					heldOpen += outcome.heldOpen().size();
					checks += outcome.startUp().stream().filter(StartUpCheck::certain).count();
					assertEquals(speaking(outcome), outcome.startUp().stream().flatMap(c -> c.firings().stream()).map(f -> f.rule().name()).collect(Collectors.toSet()));
					assertTrue(outcome.heldOpen().stream().noneMatch(h -> h.by().isEmpty()), "held open by nothing");
				} catch (Disagreement disagreement) {
					throw new AssertionError(disagreement.getMessage() + " seed " + seed + ", book " + i + ", job " + j + "\n" + job + "\n" + rules, disagreement);
				}
			}
		}
		assertTrue(fired > 500 && heldOpen > 500 && checks > 300, "the sample is dense: " + fired + " fired, " + heldOpen + " held open, " + checks + " checks");
	}

	/** @return the rules that fired and ask for a check */
	private static Set<String> speaking(Outcome outcome) {
		return outcome.firings().stream().map(Firing::rule).filter(r -> r.then().stream().anyMatch(Action.StartUp.class::isInstance))
				.map(Rule::name).collect(Collectors.toSet());
	}

	@Test
	void theSameJobGivesTheSameOutcomeFromManyThreads() {
		RandomBooks random = new RandomBooks(5);
		Edition edition = Books.edition(random.rules(15));
		Job job = random.job();
		String once = edition.run(job).toString();
		assertEquals(200, java.util.stream.IntStream.range(0, 200).parallel().mapToObj(i -> edition.run(job).toString())
				.filter(once::equals).count());
	}
}
