package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;

/** What has become of a rule on a job is what the outcome of a full run says. */
class StandingTest {
	private static final Catalogue CATALOGUE = Trade.catalogue();

	@Test
	void standingsSayWhatTheOutcomeOfTheRuleEngineSays() {
		Set<Standing> seen = EnumSet.noneOf(Standing.class);
		for (long seed = 5; seed < 8; seed++) {
			RandomBooks jobs = new RandomBooks(seed);
			Edition edition = Books.edition(new RandomBooks(seed + 50).rules(30));
			for (int j = 0; j < 40; j++) {
				Job job = jobs.job();
				List<Standing> expected = told(edition, edition.run(job));
				assertEquals(expected, edition.rehearse(job).standings());
				seen.addAll(expected);
			}
		}
		assertEquals(EnumSet.allOf(Standing.class), seen);
	}

	@ParameterizedTest
	@ValueSource(longs = { 8, 77 })
	void aBookThatIsAmendedInManyPlacesAndMovedAboutStandsAsReadAnew(long seed) {
		Random random = new Random(seed);
		List<Rule> own = read(new RandomBooks(seed + 1).rules(20)).rules();
		List<Rule> others = read(new RandomBooks(seed + 2).rules(20)).rules();
		Edition before = Edition.ofRules(own, CATALOGUE).orElseThrow();
		int compared = 0;
		for (int i = 0; i < 40; i++) {
			List<String> texts = new ArrayList<>(own.stream().map(Rule::text).toList());
			for (int k = 0; k < 3; k++) {
				int at = random.nextInt(20);
				texts.set(at, others.get(at).text());
			}
			if (random.nextBoolean()) {
				texts.remove(random.nextInt(20));
			}
			Reading reading = read("// further down\n\n" + String.join("\n\n", texts));
			Optional<Edition> after = Edition.ofRules(reading.rules(), CATALOGUE);
			if (after.isPresent()) {
				compare(before, reading.rules(), after.get(), new RandomBooks(seed + i));
				compared++;
			}
		}
		assertTrue(compared > 8, "compared only " + compared);
	}

	private static void compare(Edition before, List<Rule> rules, Edition after, RandomBooks jobs) {
		Amendment amendment = before.amend(rules);
		for (int j = 0; j < 15; j++) {
			Job job = jobs.job();
			Rehearsal first = before.rehearse(job);
			Rehearsal amended = first.under(amendment);
			List<Standing> fresh = after.rehearse(job).standings();
			List<Standing> untouched = untouched(rules, amendment, first.standings());
			assertEquals(fresh, amended == first ? untouched : amended.standings());
			assertEquals(fresh, first.standings(amendment, first.standings()).orElse(untouched));
			assertEquals(amended == first, first.standings(amendment, first.standings()).isEmpty());
		}
	}

	/** What the amendment leaves alone stands as before, and what is new is silent. */
	private static List<Standing> untouched(List<Rule> rules, Amendment amendment, List<Standing> standings) {
		return IntStream.range(0, rules.size()).map(amendment::before).mapToObj(was -> was < 0 ? Standing.SILENT : standings.get(was)).toList();
	}

	@Test
	void aMovedRuleCountsAsLeftAlone() {
		String rule = Books.rule("a", "shop practice", "", "propose( COOL_STAGES, 1 );");
		Edition before = Edition.ofRules(read(rule).rules(), CATALOGUE).orElseThrow();
		assertEquals(0, before.amend(read("// a comment\n\n" + rule).rules()).size());
		assertEquals(2, before.amend(read(rule.replace("1 )", "2 )")).rules()).size());
	}

	@Test
	void filesThatReadAsBeforeAreNotReadAgain() {
		String rule = Books.rule("a", "shop practice", "", "propose( COOL_STAGES, 1 );");
		Reading first = read(rule);
		assertSame(first.rules().get(0), first.with(Books.of(new StringBuilder(rule).toString())).rules().get(0));
		assertNotSame(first.rules().get(0), first.with(Books.of(rule + " ")).rules().get(0));
	}

	@Test
	void rulesThatDoNotGoTogetherMakeNoEdition() {
		String rule = Books.rule("a", "shop practice", "Finding( name == NOBODY_MAKES_IT )", "propose( COOL_STAGES, 1 );");
		assertEquals(Optional.empty(), Edition.ofRules(read(rule).rules(), CATALOGUE));
		assertEquals(1, Reading.together(read(rule).rules()).size());
	}

	private static Reading read(String rules) {
		Reading reading = Reading.of(Books.of(rules));
		assertEquals(List.of(), reading.problems().stream().filter(p -> !p.what().contains("already a rule")).toList());
		return reading;
	}

	private static List<Standing> told(Edition edition, Outcome outcome) {
		return edition.rules().stream().map(rule -> {
			if (outcome.heldOpen().stream().anyMatch(h -> h.rule() == rule)) {
				return Standing.HELD_OPEN;
			} else if (outcome.firings().stream().noneMatch(f -> f.rule() == rule)) {
				return Standing.SILENT;
			} else if (outcome.settings().stream().filter(s -> s.state() == SettingOutcome.State.DISPUTED)
					.anyMatch(s -> s.deciding().stream().anyMatch(p -> p.rule() == rule))) {
				return Standing.DISPUTED;
			}
			return outcome.settings().stream().anyMatch(s -> s.outranked().stream().anyMatch(p -> p.rule() == rule)) ? Standing.OUTRANKED : Standing.STANDS;
		}).toList();
	}
}
