package org.setwright.writing.text;

import java.util.List;
import java.util.Optional;

/**
 * The text of a rule file with its words and rules. It only looks at the shape; what the words mean is known to the rule
 * language. Immutable.
 *
 * @param text the whole file
 * @param pieces its words and signs, comments included, in order
 * @param blocks its rules, whole or half-written, in order
 */
public record RuleText(String text, List<Piece> pieces, List<RuleBlock> blocks) {
	public RuleText {
		pieces = List.copyOf(pieces);
		blocks = List.copyOf(blocks);
	}

	/** Never fails, whatever {@code text} is. */
	public static RuleText of(String text) {
		List<Piece> pieces = Pieces.of(text);
		return new RuleText(text, pieces, BlockReader.blocks(text, pieces));
	}

	/** @return the piece that covers {@code offset}, or ends there; a word before a sign */
	public Optional<Piece> pieceAt(int offset) {
		Optional<Piece> touching = pieces.stream().filter(p -> p.start() <= offset && offset <= p.end())
				.filter(p -> p.kind() != Piece.Kind.SIGN).findFirst();
		return touching.or(() -> pieces.stream().filter(p -> p.start() <= offset && offset < p.end()).findFirst());
	}

	/** @return the rule in which {@code offset} lies, or empty */
	public Optional<RuleBlock> blockAt(int offset) {
		return blocks.stream().filter(b -> b.covers(offset)).findFirst();
	}

	/** @return the rule that begins on line {@code line}, from 1, or empty */
	public Optional<RuleBlock> blockOnLine(int line) {
		int offset = Lines.start(text, line);
		return offset < 0 ? Optional.empty() : blocks.stream().filter(b -> b.start() >= offset && b.start() <= Lines.end(text, offset)).findFirst();
	}
}
