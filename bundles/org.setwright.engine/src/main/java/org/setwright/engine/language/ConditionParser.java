package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.engine.language.TokenReader.Lost;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;

/** Reads the conditions of a rule. */
final class ConditionParser {
	private static final String FINDING = "Finding";
	private static final String HOW = "Write patterns such as OutdoorUnit( stages == 2 ), not Humidifier( ), or ( A( ) or B( ) ).";

	private final TokenReader in;
	private final Catalogue catalogue;

	ConditionParser(TokenReader in, Catalogue catalogue) {
		this.in = in;
		this.catalogue = catalogue;
	}

	/** Reads conditions until {@code end}, which is not taken. */
	List<Condition> until(String end, Scope scope) throws Lost {
		List<Condition> conditions = new ArrayList<>();
		while (!in.sees(end)) {
			if (in.atRule() || in.sees(Token.Kind.END)) {
				in.lose(in.peek(), "The rule before has no then.", "Write then, what to propose, and end.");
			}
			if (in.sees("or") || in.sees("||")) {
				in.lose(in.peek(), "Without brackets it is not clear what belongs to this \"or\".",
						"Put both sides in brackets: ( A( ) or B( ) ).");
			}
			conditions.add(one(scope));
			if (!in.take(",") && !in.take("and")) {
				in.take("&&");
			}
		}
		return conditions;
	}

	private Condition one(Scope scope) throws Lost {
		Token first = in.peek();
		Position at = in.position(first);
		if (in.take("not")) {
			return new Condition.Not(apart(scope), at);
		} else if (in.take("exists")) {
			return new Condition.Exists(apart(scope), at);
		} else if (in.take("(")) {
			return group(scope, at);
		}
		return pattern(scope);
	}

	/** One condition whose names are not seen outside. */
	private Condition apart(Scope scope) throws Lost {
		return one(new Scope(scope));
	}

	private Condition group(Scope scope, Position at) throws Lost {
		List<Condition> conditions = new ArrayList<>();
		Token joint = null;
		boolean either = looksAheadToOr();
		Scope own = either ? new Scope(scope) : scope;
		do {
			conditions.add(either ? apart(scope) : one(own));
			Token next = in.peek();
			if (joint != null && (next.is("and") || next.is("or")) && !next.is(joint.text())) {
				in.lose(next, "\"and\" and \"or\" are mixed here, and it is not clear which comes first.",
						"Put one of them in brackets of its own.");
			}
			joint = next;
		} while (in.take("and") || in.take("or") || in.take(","));
		in.expect(")", "Join the conditions by and or or, and close the bracket.");
		return conditions.size() == 1 ? conditions.get(0)
				: either ? new Condition.Either(conditions, at) : new Condition.All(conditions, at);
	}

	/** @return whether the bracket just opened joins its conditions by or */
	private boolean looksAheadToOr() {
		int depth = 0;
		for (int i = 0;; i++) {
			Token token = in.peek(i);
			if (token.kind() == Token.Kind.END || token.is("then") || depth == 0 && (token.is(")") || token.is("and"))) {
				return false;
			} else if (depth == 0 && token.is("or")) {
				return true;
			}
			depth += token.is("(") ? 1 : token.is(")") ? -1 : 0;
		}
	}

	private Condition pattern(Scope scope) throws Lost {
		Optional<Token> variable = in.sees(Token.Kind.VARIABLE) ? Optional.of(in.next()) : Optional.empty();
		if (variable.isPresent()) {
			in.expect(":", "Write " + variable.get().text() + " : OutdoorUnit( ... ) to give a fact a name.");
		}
		Token word = in.expect(Token.Kind.WORD, "a fact", HOW);
		Optional<String> refused = Vocabulary.remedyFor(word.text());
		if (refused.isPresent()) {
			in.lose(word, "\"" + word.text() + "\" is not used in rule books.", refused.get());
		}
		if (word.is(FINDING)) {
			return finding(word, variable);
		}
		Optional<FactKind> kind = catalogue.kind(word.text());
		if (kind.isEmpty()) {
			List<String> known = new ArrayList<>(catalogue.kinds().stream().map(FactKind::name).toList());
			known.add(FINDING);
			in.unknownWord(word, "There is no fact \"" + word.text() + "\".", known);
			throw new Lost();
		}
		in.expect("(", "Write " + word.text() + "( ), with tests between the brackets.");
		Test test = new TestParser(in, kind.get(), scope).untilClosed();
		refuseSource();
		variable.ifPresent(name -> bind(name, kind.get(), scope));
		return new Condition.Pattern(variable.map(Token::text), kind.get(), test, in.position(word));
	}

	private void bind(Token name, FactKind kind, Scope scope) {
		if (scope.knows(name.text())) {
			in.fault(name, name.text() + " already names something else in this rule.", "Choose another name.");
		}
		scope.bindFact(name.text(), kind);
	}

	private Condition finding(Token word, Optional<Token> variable) throws Lost {
		String how = "Write Finding( name == DUAL_FUEL_JOB ).";
		in.expect("(", how);
		Token name = in.expect(Token.Kind.WORD, "name", how);
		if (!name.is("name")) {
			in.lose(name, "A finding has nothing but a name.", how);
		}
		in.expect("==", how);
		Token finding = in.expect(Token.Kind.WORD, "the name of a finding", how);
		in.expect(")", how);
		if (variable.isPresent()) {
			in.fault(variable.get(), "A finding has no answers, so it needs no name.", "Delete " + variable.get().text() + " :.");
		}
		return new Condition.Found(finding.text(), in.position(word));
	}

	private void refuseSource() throws Lost {
		if (in.sees("from") || in.sees("over")) {
			in.lose(in.peek(), "\"" + in.peek().text() + "\" is not used in rule books.",
					Vocabulary.remedyFor(in.peek().text()).orElseThrow());
		}
	}
}
