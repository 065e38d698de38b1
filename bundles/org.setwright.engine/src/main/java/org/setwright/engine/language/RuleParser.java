package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.Nearest;
import org.setwright.book.Problem;
import org.setwright.engine.language.TokenReader.Lost;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;

/**
 * Reads a file of rules: the checked subset of DRL. Only what the catalogue knows gets through, so a book from somebody
 * else cannot run code. A fault in one rule does not hide the others.
 */
public final class RuleParser {
	/** What a file of rules holds. @param rules those without faults @param problems all faults */
	public record Parsed(List<Rule> rules, List<Problem> problems) {
		public Parsed {
			rules = List.copyOf(rules);
			problems = List.copyOf(problems);
		}
	}

	private static final int MOST_LISTS = 3;
	private static final String END_OF_CONDITIONS = "then";
	private static final List<String> NOTES = List.of("authority", "because", "source");

	private final Catalogue catalogue;
	private final TokenReader in;
	private final List<Problem> problems = new ArrayList<>();

	private RuleParser(String file, String text, Catalogue catalogue) {
		this.catalogue = catalogue;
		in = new TokenReader(file, text, problems);
	}

	/** @param file the path below the book folder, for positions @param text the whole file */
	public static Parsed parse(String file, String text, Catalogue catalogue) {
		RuleParser parser = new RuleParser(file, text, catalogue);
		List<Rule> rules = parser.rules();
		return new Parsed(rules, parser.problems);
	}

	/** Conditions that stand alone. @param conditions none when any is faulty @param problems all faults */
	public record Conditions(List<Condition> conditions, List<Problem> problems) {
		public Conditions {
			conditions = List.copyOf(conditions);
			problems = List.copyOf(problems);
		}
	}

	/**
	 * Reads conditions alone, as they say when a job needs a setting. They ask for facts only: what rules find is not known then.
	 *
	 * @param file for positions, which count from the beginning of {@code text}
	 */
	public static Conditions conditions(String file, String text, Catalogue catalogue) {
		RuleParser parser = new RuleParser(file, text + "\n" + END_OF_CONDITIONS, catalogue);
		List<Condition> conditions = List.of();
		try {
			Token first = parser.in.peek();
			conditions = new ConditionParser(parser.in, catalogue).until(END_OF_CONDITIONS, new Scope(null));
			if (conditions.isEmpty() || parser.in.peek(1).kind() != Token.Kind.END) {
				parser.in.lose(parser.in.peek(), "Here should be conditions, and nothing else.", "Write patterns such as Humidifier( controlledBy == CONTROLLER ).");
			}
			if (wide(conditions)) {
				parser.in.fault(first, "Too many lists, such as wires, are looked through here, which could take forever.", "Ask for less.");
			}
			conditions.forEach(parser::refuseFindings);
		} catch (Lost recorded) {
			// stands in problems
		}
		return new Conditions(parser.problems.isEmpty() ? conditions : List.of(), parser.problems);
	}

	private void refuseFindings(Condition condition) {
		if (condition instanceof Condition.Found found) {
			problems.add(Problem.error(found.at(), "A finding cannot say whether a setting is needed, because rules make it only later.",
					"Ask for facts, such as Humidifier( controlledBy == CONTROLLER )."));
		}
		condition.inner().forEach(this::refuseFindings);
	}

	private List<Rule> rules() {
		List<Rule> rules = new ArrayList<>();
		while (!in.sees(Token.Kind.END)) {
			int faultsBefore = in.faults();
			Token first = in.peek();
			try {
				if (!in.atRule()) {
					Token word = in.peek();
					in.lose(word, "Here should begin a rule, not " + word.shown() + ".", Vocabulary.remedyFor(word.text())
							.orElse("Write rule \"name\" ... when ... then ... end."));
				}
				Rule rule = rule();
				if (in.faults() == faultsBefore) {
					rules.add(rule);
				}
			} catch (Lost recorded) {
				if (in.peek() == first) {
					in.next();
				}
				in.skipToRule();
			}
		}
		return rules;
	}

	private Rule rule() throws Lost {
		Token first = in.next();
		Token name = in.expect(Token.Kind.QUOTED, "the rule's name in quotes", "Write rule \"what it decides\".");
		if (name.text().isBlank() || name.text().length() > 120) {
			in.fault(name, "A rule needs a name people can tell it by, of at most 120 characters.", "Name what it decides.");
		}
		Map<String, Token> notes = notes();
		Authority authority = authority(name, notes);
		String because = note("because", name, notes);
		String source = note("source", name, notes);
		in.expect("when", "After the name come @authority, @because and @source, then when.");
		Scope scope = new Scope(null);
		List<Condition> when = new ConditionParser(in, catalogue).until("then", scope);
		if (wide(when)) {
			in.fault(name, "The rule \"" + name.text() + "\" looks through lists, such as wires, more than " + MOST_LISTS
					+ " times, which could take forever.", "Split it: let one rule find( ... ) part of it.");
		}
		in.next();
		int before = in.faults();
		List<Action> then = new ActionParser(in, catalogue, when).untilEnd(scope);
		Token end = in.next();
		if (then.isEmpty() && in.faults() == before) {
			in.fault(end, "The rule \"" + name.text() + "\" says nothing.", "Add propose( SETTING, value ); before end.");
		}
		return new Rule(name.text(), authority, because, source, when, then, in.position(first), in.textSince(first));
	}

	/** Each pattern on a list multiplies the ways to try by the length of the list. */
	private static boolean wide(List<Condition> when) {
		return when.stream().mapToInt(RuleParser::lists).sum() > MOST_LISTS;
	}

	private static int lists(Condition condition) {
		int own = condition instanceof Condition.Pattern pattern && pattern.kind().many() ? 1 : 0;
		return own + condition.inner().stream().mapToInt(RuleParser::lists).sum();
	}

	/** Reads the annotations: the word and the text between its brackets, as a token holding that text. */
	private Map<String, Token> notes() throws Lost {
		Map<String, Token> notes = new HashMap<>();
		while (in.take("@")) {
			Token word = in.expect(Token.Kind.WORD, "authority, because or source", "Write @because( \"why\" ).");
			Token open = in.expect("(", "Write @" + word.text() + "( ... ).");
			Token value = in.sees(Token.Kind.QUOTED) ? in.next() : null;
			while (value == null && !in.sees(")") && !in.sees(Token.Kind.END)) {
				Token part = in.next();
				if (part.kind() == Token.Kind.QUOTED) {
					in.lose(part, "Words with an apostrophe or quotation mark stand in quotes.",
							"Write @" + word.text() + "( \"...\" ).");
				}
			}
			Token close = in.expect(")", "Close the bracket of @" + word.text() + ".");
			String text = value != null ? value.text() : in.textBetween(open, close).strip();
			if (!NOTES.contains(word.text())) {
				in.unknownWord(word, "There is no annotation @" + word.text() + ".", NOTES);
			} else if (notes.put(word.text(), new Token(Token.Kind.QUOTED, text, open.end(), close.start(), open.line(),
					open.column() + 1)) != null) {
				in.fault(word, "@" + word.text() + " stands here twice.", "Keep one of them.");
			}
		}
		return notes;
	}

	private Authority authority(Token name, Map<String, Token> notes) {
		Token written = notes.get("authority");
		if (written == null) {
			missing("authority", name);
			return Authority.FACTORY_DEFAULT;
		}
		Optional<Authority> authority = Authority.named(written.text());
		if (authority.isEmpty()) {
			List<String> labels = Arrays.stream(Authority.values()).map(Authority::label).toList();
			in.fault(written, "\"" + written.text() + "\" is not an authority.", Nearest.to(written.text(), labels)
					.map(n -> "Did you mean " + n + "?").orElse("Write one of: " + String.join(", ", labels) + "."),
					Nearest.several(written.text(), labels, 3).stream().map(l -> " \"" + l + "\" ").toList());
		}
		return authority.orElse(Authority.FACTORY_DEFAULT);
	}

	private String note(String word, Token name, Map<String, Token> notes) {
		Token written = notes.get(word);
		if (written == null || written.text().isBlank()) {
			missing(word, name);
			return "";
		}
		return written.text();
	}

	private void missing(String word, Token name) {
		in.fault(name, "The rule \"" + name.text() + "\" has no @" + word + ".", switch (word) {
			case "authority" -> "Add @authority( shop practice ), or whichever applies.";
			case "because" -> "Add @because( \"why the van should believe it\" ).";
			default -> "Add @source( \"document, edition, place\" ) or @source( common practice ).";
		});
	}
}
