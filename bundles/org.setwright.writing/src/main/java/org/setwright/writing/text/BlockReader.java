package org.setwright.writing.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.writing.text.RuleBlock.Note;
import org.setwright.writing.text.RuleBlock.Says;

/** Finds the rules in the pieces of a file, and the parts of a rule. Never refuses: half of a rule is a rule here. */
final class BlockReader {
	private BlockReader() {
	}

	static List<RuleBlock> blocks(String text, List<Piece> pieces) {
		List<RuleBlock> blocks = new ArrayList<>();
		List<Piece> open = null;
		for (int i = 0; i < pieces.size(); i++) {
			Piece piece = pieces.get(i);
			if (begins(text, pieces, i)) {
				if (open != null) {
					blocks.add(block(open, false));
				}
				open = new ArrayList<>();
			}
			if (open != null) {
				open.add(piece);
				if (piece.is("end")) {
					blocks.add(block(open, true));
					open = null;
				}
			}
		}
		if (open != null) {
			blocks.add(block(open, false));
		}
		return blocks;
	}

	private static boolean begins(String text, List<Piece> pieces, int at) {
		Piece piece = pieces.get(at);
		boolean named = at + 1 < pieces.size() && pieces.get(at + 1).kind() == Piece.Kind.QUOTED;
		return piece.is("rule") && (named || text.substring(text.lastIndexOf('\n', piece.start()) + 1, piece.start()).isBlank());
	}

	private static RuleBlock block(List<Piece> pieces, boolean closed) {
		int last = pieces.size();
		while (!closed && last > 1 && pieces.get(last - 1).kind() == Piece.Kind.COMMENT) {
			last--;
		}
		List<Piece> own = pieces.subList(0, last);
		Optional<Piece> name = own.size() > 1 && own.get(1).kind() == Piece.Kind.QUOTED ? Optional.of(own.get(1)) : Optional.empty();
		return new RuleBlock(own, name, first(own, "when"), first(own, "then"), closed);
	}

	private static Optional<Piece> first(List<Piece> pieces, String word) {
		return pieces.stream().filter(p -> p.is(word)).findFirst();
	}

	static List<Note> notes(RuleBlock block) {
		List<Piece> pieces = block.pieces().stream().filter(p -> p.kind() != Piece.Kind.COMMENT).toList();
		List<Note> notes = new ArrayList<>();
		for (int i = 0; i + 2 < pieces.size() && !pieces.get(i).is("when"); i++) {
			if (pieces.get(i).is("@") && pieces.get(i + 1).kind() == Piece.Kind.WORD && pieces.get(i + 2).is("(")) {
				int close = i + 3;
				StringBuilder inside = new StringBuilder();
				while (close < pieces.size() && !pieces.get(close).is(")") && !pieces.get(close).is("@") && !pieces.get(close).is("when")) {
					inside.append(inside.isEmpty() ? "" : " ").append(pieces.get(close++).text());
				}
				if (close < pieces.size() && pieces.get(close).is(")")) {
					notes.add(new Note(pieces.get(i + 1).text(), pieces.get(i).start(), pieces.get(close).end(), inside.toString()));
				}
			}
		}
		return notes;
	}

	static List<Says> says(RuleBlock block) {
		List<Says> says = new ArrayList<>();
		List<Piece> open = new ArrayList<>();
		int from = block.then().map(Piece::end).orElse(block.end());
		for (Piece piece : block.pieces()) {
			if (piece.start() < from || piece.kind() == Piece.Kind.COMMENT || piece.is("end")) {
				continue;
			}
			open.add(piece);
			if (piece.is(";")) {
				says.add(new Says(open.get(0).text(), open));
				open = new ArrayList<>();
			}
		}
		if (!open.isEmpty()) {
			says.add(new Says(open.get(0).text(), open));
		}
		return says;
	}
}
