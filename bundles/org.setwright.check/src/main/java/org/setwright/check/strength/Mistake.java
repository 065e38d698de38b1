package org.setwright.check.strength;

import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.engine.language.Rule;

/**
 * A small mistake made on purpose in one rule, as a person might make it at the keyboard.
 *
 * @param rule as the book has it
 * @param sentence what was done, for people: "fuel is natural gas" taken for "fuel is propane"
 * @param at where in the book
 * @param instead the rule with the mistake; empty when the rule is left out
 */
public record Mistake(Rule rule, Kind kind, String sentence, Position at, Optional<Rule> instead) {

	/** Sorts of mistakes. */
	public enum Kind {
		/** A test turned into its opposite. */
		COMPARISON_FLIPPED("comparison flipped"),
		/** A limit a little higher or lower, or itself no longer within. */
		BOUNDARY_MOVED("boundary moved"),
		/** A neighbouring value tested for or proposed. */
		VALUE_EXCHANGED("value exchanged"),
		/** A condition, or one test of it, forgotten. */
		CONDITION_DROPPED("condition dropped"),
		/** More authority than the source gives, or less for the highest. */
		AUTHORITY_CHANGED("authority changed"),
		/** One of several things a rule says forgotten. */
		OUTCOME_DROPPED("outcome dropped"),
		/** The whole rule forgotten. */
		RULE_LEFT_OUT("rule left out");

		private final String words;

		Kind(String words) {
			this.words = words;
		}

		/** @return for people */
		public String words() {
			return words;
		}
	}
}
