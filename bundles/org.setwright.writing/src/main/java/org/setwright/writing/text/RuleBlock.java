package org.setwright.writing.text;

import java.util.List;
import java.util.Optional;

/**
 * One rule as it stands in a file, whole or half-written.
 *
 * @param pieces all of it, from the word rule up to and with end, or to where the next rule begins; comments included
 * @param name the piece that names it; empty when it has none yet
 * @param when the word when; empty when it is missing
 * @param then the word then; empty when it is missing
 * @param closed whether it ends with the word end
 */
public record RuleBlock(List<Piece> pieces, Optional<Piece> name, Optional<Piece> when, Optional<Piece> then, boolean closed) {
	public RuleBlock {
		pieces = List.copyOf(pieces);
	}

	/** @return offset of the word rule */
	public int start() {
		return pieces.get(0).start();
	}

	/** @return offset behind its last piece */
	public int end() {
		return pieces.get(pieces.size() - 1).end();
	}

	/** @return whether {@code offset} lies in it, its end included */
	public boolean covers(int offset) {
		return start() <= offset && offset <= end();
	}

	/** @return what it is called; "" when it has no name yet */
	public String called() {
		return name.map(Piece::inside).orElse("");
	}

	/**
	 * An annotation.
	 *
	 * @param word what follows the at sign
	 * @param start offset of the at sign
	 * @param end offset behind its closing bracket
	 * @param inside what stands between its brackets, as written
	 */
	public record Note(String word, int start, int end, String inside) {
	}

	/** @return its annotations that have both brackets, in order */
	public List<Note> notes() {
		return BlockReader.notes(this);
	}

	/** @return the annotation {@code word}, or empty */
	public Optional<Note> note(String word) {
		return notes().stream().filter(n -> n.word().equals(word)).findFirst();
	}

	/**
	 * One thing the rule says.
	 *
	 * @param word propose, find, caution or startUp, or what stands in their place
	 * @param pieces from the word to the semicolon, which is left out when it is missing
	 */
	public record Says(String word, List<Piece> pieces) {
		public Says {
			pieces = List.copyOf(pieces);
		}

		/** @return offset of its first character */
		public int start() {
			return pieces.get(0).start();
		}

		/** @return offset behind its last character */
		public int end() {
			return pieces.get(pieces.size() - 1).end();
		}

		/** @return the first word between its brackets, or empty */
		public Optional<Piece> first() {
			return pieces.stream().filter(p -> p.start() > start() && p.kind() == Piece.Kind.WORD).findFirst();
		}
	}

	/** @return what stands between then and end, in order */
	public List<Says> says() {
		return BlockReader.says(this);
	}
}
