package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.book.Mend;
import org.setwright.book.Position;
import org.setwright.book.Problem;

/** Splits a rule file into tokens. Comments and blanks are passed over; every token knows its place. */
final class Lexer {
	/** What an annotation says, without quotation marks of its own. */
	private static final Pattern SAID = Pattern.compile("\\s*@\\w+\\s*\\(\\s*([^\"]*[^\"\\s])\\s*\\)\\s*");
	private static final List<String> LONG_SIGNS = List.of("==", "!=", "<=", ">=", "&&", "||");

	private final String file;
	private final String text;
	private final List<Problem> problems;
	private final List<Token> tokens = new ArrayList<>();
	private int at;
	private int line = 1;
	private int lineStart;

	private Lexer(String file, String text, List<Problem> problems) {
		this.file = file;
		this.text = text;
		this.problems = problems;
	}

	/** @return the tokens of {@code text}, ending with one of kind END; faults are added to {@code problems} */
	static List<Token> tokens(String file, String text, List<Problem> problems) {
		return new Lexer(file, text, problems).all();
	}

	private List<Token> all() {
		while (passOver()) {
			char c = text.charAt(at);
			if (c == '"' || c == '\'') {
				quoted(c);
			} else if (c == '$' || Character.isLetter(c) || c == '_') {
				int end = endOf(at + 1, false);
				add(c == '$' ? Token.Kind.VARIABLE : Token.Kind.WORD, text.substring(at, end), end);
			} else if (Character.isDigit(c)) {
				int end = endOf(at + 1, true);
				add(Token.Kind.NUMBER, text.substring(at, end), end);
			} else {
				String two = text.substring(at, Math.min(at + 2, text.length()));
				String sign = LONG_SIGNS.contains(two) ? two : String.valueOf(c);
				add(Token.Kind.SIGN, sign, at + sign.length());
			}
		}
		add(Token.Kind.END, "", at);
		return tokens;
	}

	/** Skips blanks and comments. @return whether anything is left */
	private boolean passOver() {
		while (at < text.length()) {
			char c = text.charAt(at);
			if (text.startsWith("//", at)) {
				int end = text.indexOf('\n', at);
				at = end < 0 ? text.length() : end;
			} else if (text.startsWith("/*", at)) {
				int end = text.indexOf("*/", at + 2);
				if (end < 0) {
					problems.add(Problem.error(here(), "This comment never ends, so everything after it is ignored.",
							"Close it with */."));
				}
				moveTo(end < 0 ? text.length() : end + 2);
			} else if (Character.isWhitespace(c)) {
				moveTo(at + 1);
			} else {
				return true;
			}
		}
		return false;
	}

	private void quoted(char quote) {
		StringBuilder inside = new StringBuilder();
		int end = at + 1;
		while (end < text.length() && text.charAt(end) != quote && text.charAt(end) != '\n') {
			if (text.charAt(end) == '\\' && end + 1 < text.length() && text.charAt(end + 1) != '\n') {
				end++;
			}
			inside.append(text.charAt(end++));
		}
		if (end >= text.length() || text.charAt(end) != quote) {
			notClosed(inside.toString(), end);
		} else {
			add(Token.Kind.QUOTED, inside.toString(), end + 1);
		}
	}

	/** An apostrophe in what an annotation says is the likeliest reason, and then the whole of it wants quotation marks. */
	private void notClosed(String inside, int end) {
		int lineEnd = text.indexOf('\n', at) < 0 ? text.length() : text.indexOf('\n', at);
		Matcher said = SAID.matcher(text.substring(lineStart, lineEnd));
		if (said.matches() && lineStart + said.start(1) < at && at < lineStart + said.end(1)) {
			String quoted = '"' + said.group(1) + '"';
			at = lineStart + said.start(1);
			tokens.removeIf(t -> t.start() >= at);
			problems.add(Problem.error(here(), "This text has an apostrophe in it, so it has to stand between quotation marks.",
					"Write " + quoted + ".").with(new Mend.Replace(said.group(1), List.of(quoted))));
			add(Token.Kind.QUOTED, said.group(1), lineStart + said.end(1));
		} else {
			problems.add(Problem.error(here(), "The text that begins here has no closing quotation mark.",
					"Close it on the same line; if it is an apostrophe, put the whole text between \" and \"."));
			add(Token.Kind.QUOTED, inside, end);
		}
	}

	private int endOf(int from, boolean number) {
		int end = from;
		while (end < text.length() && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_'
				|| number && text.charAt(end) == '.')) {
			end++;
		}
		return end;
	}

	private void add(Token.Kind kind, String shown, int end) {
		tokens.add(new Token(kind, shown, at, end, line, at - lineStart + 1));
		at = end;
	}

	private void moveTo(int end) {
		for (; at < end; at++) {
			if (text.charAt(at) == '\n') {
				line++;
				lineStart = at + 1;
			}
		}
	}

	private Position here() {
		return new Position(file, line, at - lineStart + 1);
	}
}
