package org.setwright.engine.tables;

import java.util.Optional;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;

/**
 * Answers to one question which no cell of a column tells apart.
 *
 * @param plain one of them, as rules compare it; empty for the unknown answer
 * @param from the lower end with the sign before it, of an ordered field; empty when there is none
 * @param to the upper end likewise
 * @param words the answer itself where it is a single one, or what stands for all others
 */
record Piece(Optional<Object> plain, Optional<End> from, Optional<End> to, String words) {

	/** An end of a range. @param text the limit as people write it @param within whether the limit itself is within */
	record End(String text, boolean within) {
	}

	static Piece single(Object plain, String words) {
		End end = new End(words, true);
		return new Piece(Optional.of(plain), Optional.of(end), Optional.of(end), words);
	}

	static Piece unknown() {
		return new Piece(Optional.empty(), Optional.empty(), Optional.empty(), "unknown");
	}

	/** @return whether {@code test} holds for these answers */
	boolean passes(Test test) {
		if (test instanceof Test.IsUnknown unknown) {
			return plain.isEmpty() == unknown.unknown();
		} else if (test instanceof Test.AllOf all) {
			return all.tests().stream().allMatch(this::passes);
		} else if (test instanceof Test.Among among) {
			return plain.isPresent() && among.values().stream().anyMatch(v -> v.plain().equals(plain.get())) == among.among();
		}
		Test.Compare compare = (Test.Compare) test;
		return plain.isPresent() && compare.comparison().holds(plain.get(), ((Operand.Literal) compare.right()).value().plain());
	}
}
