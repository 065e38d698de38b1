package org.setwright.command.bench;

import java.util.List;
import java.util.function.Supplier;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EOFError;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.setwright.bench.Session;
import org.setwright.bench.completing.Completion;
import org.setwright.bench.completing.Offer;
import org.setwright.bench.hand.AtHand;

/** Tells the line reader when a line is finished, and what could be typed next. */
final class LineWords implements Parser, Completer {
	private static final int LONGEST_MEANING = 60;
	private final Supplier<AtHand> hand;

	/** @param hand what lies on the bench now */
	LineWords(Supplier<AtHand> hand) {
		this.hand = hand;
	}

	@Override
	public ParsedLine parse(String line, int cursor, ParseContext context) {
		if (context == ParseContext.ACCEPT_LINE && Session.unfinished(line)) {
			throw new EOFError(-1, -1, "the rule goes on");
		}
		boolean completing = context == ParseContext.COMPLETE;
		String typed = line.substring(0, Math.min(cursor, line.length()));
		List<Offer> offers = completing ? Completion.of(hand.get(), typed) : List.of();
		int from = offers.stream().mapToInt(Offer::from).min().orElse(typed.length());
		return new Begun(line, cursor, Math.min(from, typed.length()), offers);
	}

	@Override
	public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
		if (line instanceof Begun begun) {
			String typed = begun.line().substring(0, begun.cursor());
			int order = 0;
			for (Offer offer : begun.offers()) {
				String before = offer.from() > typed.length() ? "" : typed.substring(begun.from(), offer.from());
				candidates.add(new Candidate(before + offer.text(), offer.text().strip(), null, shortened(offer.meaning()), null, null, false, order++));
			}
		}
	}

	private static String shortened(String meaning) {
		return meaning.isBlank() ? null : meaning.length() <= LONGEST_MEANING ? meaning : meaning.substring(0, LONGEST_MEANING - 3).stripTrailing() + "...";
	}

	/** A line of which one word is being typed: everything from {@code from} on, blanks too. */
	private record Begun(String line, int cursor, int from, List<Offer> offers) implements CompletingParsedLine {
		@Override
		public String word() {
			return line.substring(from, Math.max(from, Math.min(cursor, line.length())));
		}

		@Override
		public int wordCursor() {
			return word().length();
		}

		@Override
		public int wordIndex() {
			return from == 0 ? 0 : 1;
		}

		@Override
		public List<String> words() {
			return from == 0 ? List.of(word()) : List.of(line.substring(0, from), word());
		}

		@Override
		public CharSequence escape(CharSequence candidate, boolean complete) {
			return candidate;
		}

		@Override
		public int rawWordCursor() {
			return wordCursor();
		}

		@Override
		public int rawWordLength() {
			return word().length();
		}
	}
}
