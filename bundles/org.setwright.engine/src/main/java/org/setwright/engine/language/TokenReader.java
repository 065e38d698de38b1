package org.setwright.engine.language;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.setwright.book.Mend;
import org.setwright.book.Position;
import org.setwright.book.Nearest;
import org.setwright.book.Problem;

/** Reads the tokens of one rule file in order, and collects what is wrong with them. */
final class TokenReader {
	/** The rest of the rule makes no sense; the problem has been recorded. */
	static final class Lost extends Exception {
		private static final long serialVersionUID = 1;

		Lost() {
			super(null, null, false, false);
		}
	}

	private static final Set<String> MAY_BE_ADDED = Set.of(";", ",", ")");
	private static final int MOST_OFFERED = 3;

	private final String file;
	private final String text;
	private final List<Token> tokens;
	private final List<Problem> problems;
	private int at;

	TokenReader(String file, String text, List<Problem> problems) {
		this.file = file;
		this.text = text;
		this.problems = problems;
		tokens = Lexer.tokens(file, text, problems);
	}

	Token peek() {
		return tokens.get(at);
	}

	Token peek(int ahead) {
		return tokens.get(Math.min(at + ahead, tokens.size() - 1));
	}

	Token next() {
		Token token = tokens.get(at);
		at = Math.min(at + 1, tokens.size() - 1);
		return token;
	}

	boolean sees(String wanted) {
		return peek().is(wanted);
	}

	boolean sees(Token.Kind kind) {
		return peek().kind() == kind;
	}

	/** Takes the next token if it is {@code wanted}. */
	boolean take(String wanted) {
		boolean there = sees(wanted);
		if (there) {
			next();
		}
		return there;
	}

	/** Takes {@code wanted} or gives the rule up. */
	Token expect(String wanted, String remedy) throws Lost {
		if (sees(wanted)) {
			return next();
		}
		String what = "Here should be " + wanted + ", not " + peek().shown() + ".";
		return MAY_BE_ADDED.contains(wanted) ? loseFor(wanted.equals(")") ? " )" : wanted, what, remedy) : lose(peek(), what, remedy);
	}

	/** Takes a token of {@code kind} or gives the rule up. */
	Token expect(Token.Kind kind, String what, String remedy) throws Lost {
		return sees(kind) ? next() : lose(peek(), "Here should be " + what + ", not " + peek().shown() + ".", remedy);
	}

	/** Records a problem; reading goes on. */
	void fault(Token token, String what, String remedy) {
		problems.add(Problem.error(position(token), what, remedy));
	}

	/** Records a problem that any of {@code instead} in the place of {@code token} would mend; reading goes on. */
	void fault(Token token, String what, String remedy, List<String> instead) {
		problems.add(Problem.error(position(token), what, remedy).instead(text.substring(token.start(), token.end()), instead));
	}

	/** Records that {@code token} is no known word, with the nearest right one. */
	void unknownWord(Token token, String what, Collection<String> known) {
		unknownWord(token, what, known, "Look the word up in the catalogue.");
	}

	/** The same. @param otherwise what to do when none is near, and there are too many to list */
	void unknownWord(Token token, String what, Collection<String> known, String otherwise) {
		fault(token, what, Nearest.to(token.text(), known).map(n -> "Did you mean " + n + "?")
				.orElseGet(() -> known.size() <= 12 ? "Write one of: " + String.join(", ", known) + "." : otherwise),
				Nearest.several(token.text(), known, MOST_OFFERED));
	}

	/** Records a problem and gives the rule up. Declared to return so that callers can return it. */
	<T> T lose(Token token, String what, String remedy) throws Lost {
		fault(token, what, remedy);
		throw new Lost();
	}

	/** Records that {@code missing} should stand before the next token and gives the rule up. */
	<T> T loseFor(String missing, String what, String remedy) throws Lost {
		problems.add(Problem.error(position(peek()), what, remedy).with(new Mend.Insert(missing)));
		throw new Lost();
	}

	Position position(Token token) {
		return new Position(file, token.line(), token.column());
	}

	/** @return a part of the text in quotes of {@code quoted}, or of a part of it, as a token that knows its own place */
	Token inside(Token quoted, int from, int to) {
		int start = quoted.start() + (quoted.kind() == Token.Kind.QUOTED ? 1 : 0);
		int end = start;
		for (int i = 0; i < to; i++) {
			start = i == from ? end : start;
			end += text.charAt(end) == '\\' ? 2 : 1;
		}
		start = from == to ? end : start;
		return new Token(Token.Kind.WORD, quoted.text().substring(from, to), start, end, quoted.line(),
				quoted.column() + start - quoted.start());
	}

	/** @return the text from {@code first} up to the token before the next one */
	String textSince(Token first) {
		return text.substring(first.start(), tokens.get(Math.max(at - 1, 0)).end());
	}

	/** @return the text between two tokens, both left out */
	String textBetween(Token before, Token after) {
		return text.substring(before.end(), after.start());
	}

	int faults() {
		return problems.size();
	}

	/** Goes on to the next place where a rule begins: the word rule at the start of a line, or the end of the file. */
	void skipToRule() {
		while (!sees(Token.Kind.END) && !(atRule())) {
			next();
		}
	}

	/** @return whether the next tokens begin a rule */
	boolean atRule() {
		return sees("rule") && (peek(1).kind() == Token.Kind.QUOTED || startsLine(peek()));
	}

	private boolean startsLine(Token token) {
		int lineStart = text.lastIndexOf('\n', token.start() - 1) + 1;
		return text.substring(lineStart, token.start()).isBlank();
	}
}
