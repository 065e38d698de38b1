package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Job;

/** A job rehearsed under an amended book comes to what the rule engine says of that book compiled in full. */
class RehearsalTest {
	private static final int RULES = 15;
	/** So many amended books are given to the rule engine, too, which takes its time to compile. */
	private static final int COMPILED_IN_PART = 4;

	@ParameterizedTest
	@ValueSource(longs = { 3, 20261125, 99 })
	void aReplacedRuleGivesWhatTheWholeBookCompiledAnewGives(long seed) {
		Random random = new Random(seed);
		RandomBooks jobs = new RandomBooks(seed);
		Edition before = Books.edition(new RandomBooks(seed + 1).rules(RULES));
		Edition others = Books.edition(new RandomBooks(seed + 2).rules(RULES));
		int differed = 0;
		int compared = 0;
		for (int i = 0; i < 12; i++) {
			int at = random.nextInt(RULES);
			Optional<Edition> after = with(before, at, others.rules().get(at).text());
			if (after.isEmpty()) {
				continue;
			}
			Amendment amendment = before.amend(before.rules().get(at), after.get().rules().get(at));
			Optional<Edition> amended = i < COMPILED_IN_PART ? Optional.of(before.under(amendment)) : Optional.empty();
			for (int j = 0; j < 25; j++) {
				Job job = jobs.job();
				Rehearsal first = before.rehearse(job);
				assertEquals(before.run(job), first.outcome());
				String words = "seed " + seed + ", rule " + at;
				amended.ifPresent(a -> assertEquals(told(after.get().run(job)), told(a.run(job)), "compiled in part, " + words));
				assertEquals(told(after.get().run(job)), told(first.under(amendment).outcome()), words);
				differed += first.under(amendment) == first ? 0 : 1;
				compared++;
			}
		}
		assertTrue(differed > 20 && compared > differed, differed + " of " + compared + " differ");
	}

	@Test
	void aRuleThatIsLeftOutNoLongerSpeaks() {
		Edition edition = Books.edition(Books.rule("a", "shop practice", "", "propose( COOL_STAGES, 1 );")
				+ Books.rule("b", "factory default", "", "propose( COOL_STAGES, 2 );"));
		Outcome outcome = edition.rehearse(Jobs.of()).under(edition.amend(edition.rules().get(0))).outcome();
		assertEquals(List.of("b"), outcome.firings().stream().map(f -> f.rule().name()).toList());
	}

	@Test
	void anAmendmentThatTouchesNothingCostsNothing() {
		Edition edition = Books.edition(Books.rule("cold", "shop practice", "OutdoorUnit( )", "propose( COOL_STAGES, 1 );")
				+ Books.rule("b", "factory default", "", "propose( COOL_STAGES, 2 );"));
		Rehearsal rehearsal = edition.rehearse(Jobs.of("OutdoorUnit none"));
		assertSame(rehearsal, rehearsal.under(edition.amend(edition.rules().get(0))));
	}

	@Test
	void aRuleOfAnotherBookCannotBeAmended() {
		Edition edition = Books.edition(Books.rule("a", "shop practice", "", "propose( COOL_STAGES, 1 );"));
		Rule strange = Books.edition(Books.rule("a", "shop practice", "", "propose( COOL_STAGES, 1 );")).rules().get(0);
		assertThrows(IllegalArgumentException.class, () -> edition.amend(strange));
	}

	@Test
	void aBookWithManyOtherRulesGivesWhatThatBookCompiledAnewGives() {
		RandomBooks jobs = new RandomBooks(7);
		Edition before = Books.edition(new RandomBooks(8).rules(RULES));
		Edition after = Books.edition(new RandomBooks(9).rules(RULES));
		Amendment amendment = before.amend(after.rules());
		assertTrue(amendment.sound());
		for (int j = 0; j < 25; j++) {
			Job job = jobs.job();
			assertEquals(told(after.run(job)), told(before.rehearse(job).under(amendment).outcome()));
		}
	}

	@Test
	void aBookWhoseRulesGoInACircleIsNotSound() {
		String a = Books.rule("a", "shop practice", "Finding( name == B )", "find( A );");
		Edition one = Books.edition(a + Books.rule("b", "shop practice", "", "find( B );"));
		Edition other = Books.edition(Books.rule("c", "shop practice", "", "find( A );") + Books.rule("b", "shop practice", "Finding( name == A )", "find( B );"));
		assertTrue(one.amend(one.rules()).sound());
		assertEquals(false, one.amend(List.of(one.rules().get(0), other.rules().get(1))).sound());
	}

	/** @return empty when the book would have a problem, for example a finding that nobody makes any more */
	private static Optional<Edition> with(Edition edition, int at, String text) {
		List<String> texts = new ArrayList<>(edition.rules().stream().map(Rule::text).toList());
		texts.set(at, text);
		return Books.compile(texts.stream().collect(Collectors.joining("\n\n"))).edition();
	}

	/** @return everything but the places where the rules stand */
	private static String told(Outcome outcome) {
		return outcome.toString().replaceAll("Position\\[[^\\]]*\\]|rules/test.drl:\\d+:\\d+", "");
	}
}
