package org.setwright.check.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.check.strength.Mistake.Kind;
import org.setwright.engine.Edition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.Trade;

/** The jobs of the starter book notice what somebody could do to its rules. */
class StarterStrengthTest {
	private static final double LEAST_NOTICED = 0.9;
	private static final Book BOOK = BookReader.read(Path.of("../../rules/starter"), Trade.catalogue());
	private static final Edition EDITION = Edition.compile(BOOK).edition().orElseThrow();

	@Test
	void everyRuleIsMissedAndNineMistakesOfTenAreNoticed() {
		Strength strength = Strength.of(EDITION, BOOK.jobs(), Progress.UNWATCHED);
		assertEquals(List.of(), strength.left(), "every job takes part");
		assertEquals(EDITION.rules().size(), strength.tried().stream().filter(t -> t.mistake().kind() == Kind.RULE_LEFT_OUT).count());
		assertEquals(List.of(), strength.survivors().stream().map(Strength.Tried::mistake).filter(m -> m.kind() == Kind.RULE_LEFT_OUT)
				.map(m -> m.rule().name()).toList(), "rules that nobody would miss");
		assertTrue(strength.share() >= LEAST_NOTICED, () -> strength.survivors().size() + " of " + strength.tried().size() + " unnoticed:\n"
				+ strength.survivors().stream().map(t -> t.mistake().rule().name() + ": " + t.mistake().sentence()).collect(Collectors.joining("\n")));
	}

	/** Where it is said that no job lets two rules speak, none of the saved jobs does, and while one speaks the other is not held open. */
	@Test
	void rulesThatContradictEachOtherNeverSpeakTogether() {
		Apart apart = new Apart(EDITION.rules());
		int pairs = 0;
		for (JobCase job : BOOK.jobs()) {
			Outcome outcome = EDITION.rehearse(job.job()).outcome();
			List<Rule> speaking = outcome.firings().stream().map(Firing::rule).distinct().toList();
			List<Rule> possible = Stream.concat(speaking.stream(), outcome.heldOpen().stream().map(HeldOpen::rule)).toList();
			for (Rule one : speaking) {
				List<String> denied = possible.stream().filter(other -> apart.never(one, other)).map(Rule::name).toList();
				assertEquals(List.of(), denied, () -> one.name() + " speaks on " + job.name());
				pairs += possible.size();
			}
		}
		assertTrue(pairs > 100_000, pairs + " pairs");
	}
}
