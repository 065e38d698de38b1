package org.setwright.writing.layout;

import java.util.List;
import java.util.Set;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleText;

/**
 * Lays a rule file out as the starter book is: rule, when, then and end at the left, what belongs to them four blanks in, blanks
 * round brackets and signs, one blank line between rules. Lines stay the lines they are, comments stay as they are, and no word
 * is changed.
 */
public final class Tidy {
	private static final String STEP = "    ";
	private static final Set<String> AT_THE_LEFT = Set.of("rule", "when", "then", "end");
	private static final Set<String> TIGHT_BEFORE = Set.of(",", ";", ".");
	private final RuleText rules;
	private final StringBuilder result = new StringBuilder();
	private int open;
	private int blank;

	private Tidy(RuleText rules) {
		this.rules = rules;
	}

	/** @return {@code text} laid out; the same text when that could change what it says */
	public static String of(String text) {
		RuleText rules = RuleText.of(text);
		String lineBreak = Lines.lineBreak(text);
		String tidied = new Tidy(rules).lines().replace("\n", lineBreak);
		List<String> before = rules.pieces().stream().map(p -> p.text().strip()).toList();
		List<String> after = RuleText.of(tidied).pieces().stream().map(p -> p.text().strip()).toList();
		return before.equals(after) ? tidied : text;
	}

	private String lines() {
		String text = rules.text();
		int from = 0;
		int next = 0;
		while (from < text.length()) {
			int end = Lines.end(text, from);
			int first = next;
			while (next < rules.pieces().size() && rules.pieces().get(next).start() < end) {
				next++;
			}
			List<Piece> pieces = rules.pieces().subList(first, next);
			int last = pieces.isEmpty() ? end : pieces.get(pieces.size() - 1).end();
			if (last > end) {
				// a comment that goes on over lines is left as it is
				end = Lines.end(text, last);
				line(text.substring(from, end).stripTrailing().replace("\r\n", "\n"));
				while (next < rules.pieces().size() && rules.pieces().get(next).start() < end) {
					next++;
				}
			} else if (pieces.isEmpty()) {
				blank++;
			} else {
				line(indent(pieces.get(0)) + spaced(pieces));
			}
			from = Lines.next(text, end);
		}
		return result.toString();
	}

	private void line(String line) {
		boolean begins = line.startsWith("rule ");
		boolean first = result.isEmpty();
		int blanks = first ? 0 : begins && !behindComment() ? 1 : Math.min(blank, 1);
		result.append("\n".repeat(blanks)).append(line).append('\n');
		blank = 0;
	}

	/** What stands right above a rule belongs to it. */
	private boolean behindComment() {
		String last = result.substring(result.lastIndexOf("\n", result.length() - 2) + 1);
		return last.startsWith("//") || last.endsWith("*/\n");
	}

	private String indent(Piece first) {
		boolean part = AT_THE_LEFT.contains(first.text());
		open = part ? 0 : open;
		boolean left = part || rules.blockAt(first.start()).isEmpty();
		boolean closing = first.is(")");
		return left ? "" : STEP.repeat(1 + Math.max(0, open - (closing ? 1 : 0)));
	}

	private String spaced(List<Piece> pieces) {
		StringBuilder line = new StringBuilder();
		Piece before = null;
		for (Piece piece : pieces) {
			boolean note = piece.kind() == Piece.Kind.COMMENT && before != null;
			line.append(before == null || tight(before, piece) ? "" : note ? written(before, piece) : " ").append(piece.text().stripTrailing());
			open = Math.max(0, open + (piece.is("(") ? 1 : piece.is(")") ? -1 : 0));
			before = piece;
		}
		return line.toString();
	}

	/** The blanks before a comment at the end of a line are somebody's own. */
	private String written(Piece before, Piece comment) {
		return comment.start() > before.end() ? rules.text().substring(before.end(), comment.start()) : " ";
	}

	private static boolean tight(Piece before, Piece piece) {
		boolean call = piece.is("(") && before.kind() == Piece.Kind.WORD && !Set.of("in", "not", "exists", "or", "and").contains(before.text());
		return before.is("@") || before.is(".") || before.is("-") && piece.kind() == Piece.Kind.NUMBER || call
				|| piece.kind() == Piece.Kind.SIGN && TIGHT_BEFORE.contains(piece.text());
	}
}
