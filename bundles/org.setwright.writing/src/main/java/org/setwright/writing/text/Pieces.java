package org.setwright.writing.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits the text of a rule file into pieces, comments included; every character but blanks belongs to one. */
final class Pieces {
	private static final Pattern PIECE = Pattern.compile("(?<comment>//[^\\n]*|/\\*(?s:.*?)(?:\\*/|\\z))"
			+ "|(?<quoted>\"[^\"\\\\\\n]*+(?:\\\\[^\\n][^\"\\\\\\n]*+)*+\"?|'[^'\\\\\\n]*+(?:\\\\[^\\n][^'\\\\\\n]*+)*+'?)"
			+ "|(?<variable>\\$[\\p{L}\\p{N}_]*)|(?<word>[\\p{L}_][\\p{L}\\p{N}_]*)|(?<number>\\p{N}[\\p{L}\\p{N}_.]*)"
			+ "|(?<sign>==|!=|<=|>=|&&|\\|\\||\\S)");

	private Pieces() {
	}

	static List<Piece> of(String text) {
		List<Piece> pieces = new ArrayList<>();
		Matcher piece = PIECE.matcher(text);
		while (piece.find()) {
			pieces.add(new Piece(kind(piece), piece.group(), piece.start()));
		}
		return pieces;
	}

	private static Piece.Kind kind(Matcher piece) {
		for (Piece.Kind kind : Piece.Kind.values()) {
			if (piece.group(kind.name().toLowerCase(java.util.Locale.ROOT)) != null) {
				return kind;
			}
		}
		throw new IllegalStateException("a piece without kind: " + piece.group());
	}
}
