package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.setwright.book.Position;
import org.setwright.engine.language.TokenReader.Lost;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/** Reads what stands between the brackets of a pattern. */
final class TestParser {
	private static final int LONGEST_EXPRESSION = 100;
	private static final Test NONE = new Test.AllOf(List.of());
	private static final String HOW = "Write tests such as stages == 2, separated by commas.";

	private final TokenReader in;
	private final OperandParser operands;
	private final FactKind kind;
	private final Scope scope;
	private boolean mayBind = true;

	TestParser(TokenReader in, FactKind kind, Scope scope) {
		this.in = in;
		this.kind = kind;
		this.scope = scope;
		operands = new OperandParser(in);
	}

	/** Reads up to and with the closing bracket. */
	Test untilClosed() throws Lost {
		List<Test> tests = new ArrayList<>();
		if (in.take(")")) {
			return NONE;
		}
		do {
			tests.add(either());
		} while (in.take(","));
		in.expect(")", HOW);
		return tests.size() == 1 ? tests.get(0) : new Test.AllOf(tests);
	}

	private Test either() throws Lost {
		boolean couldBind = mayBind;
		List<Test> tests = new ArrayList<>(List.of(both()));
		while (in.take("||")) {
			mayBind = false;
			tests.add(both());
		}
		mayBind = couldBind;
		return tests.size() == 1 ? tests.get(0) : new Test.AnyOf(tests);
	}

	private Test both() throws Lost {
		List<Test> tests = new ArrayList<>(List.of(single()));
		while (in.take("&&")) {
			tests.add(single());
		}
		return tests.size() == 1 ? tests.get(0) : new Test.AllOf(tests);
	}

	private Test single() throws Lost {
		if (in.take("(")) {
			boolean couldBind = mayBind;
			mayBind = false;
			Test inner = either();
			mayBind = couldBind;
			in.expect(")", "Close the bracket.");
			return inner;
		}
		if (in.sees(Token.Kind.VARIABLE)) {
			return bind();
		}
		Token word = in.expect(Token.Kind.WORD, "a field of the " + kind.label(), HOW);
		Optional<Field> field = field(word);
		return field.isPresent() ? ofField(word, field.get()) : passOver();
	}

	private Test bind() throws Lost {
		Token name = in.next();
		in.expect(":", "Write " + name.text() + " : field to give the answer a name.");
		Token word = in.expect(Token.Kind.WORD, "a field of the " + kind.label(), HOW);
		Optional<Field> field = field(word);
		if (field.isEmpty()) {
			return passOver();
		}
		if (!mayBind) {
			in.fault(name, "A name cannot be bound inside || or brackets, because it might have no answer.",
					"Bind it in a test of its own, before a comma.");
		} else if (scope.knows(name.text())) {
			in.fault(name, name.text() + " already names something else in this rule.", "Choose another name.");
		} else {
			scope.bindAnswer(name.text(), kind, field.get());
		}
		Test bound = new Test.Bind(name.text(), field.get(), in.position(name));
		boolean ends = in.sees(",") || in.sees(")");
		return ends ? bound : new Test.AllOf(List.of(bound, ofField(word, field.get())));
	}

	private Optional<Field> field(Token word) throws Lost {
		if (in.sees("(")) {
			return in.lose(word, "\"" + word.text() + "(\" is program code, and a rule cannot run any.",
					"Compare a field of the " + kind.label() + " with a value instead.");
		}
		if (in.sees(".")) {
			return in.lose(word, "A field stands for itself; nothing can follow it after a dot.",
					"Compare the field with a value, for example " + kind.fields().get(0).name() + " == ...");
		}
		Optional<Field> field = kind.field(word.text());
		if (field.isEmpty()) {
			Optional<String> refused = Vocabulary.remedyFor(word.text());
			if (refused.isPresent()) {
				in.lose(word, "\"" + word.text() + "\" is not used in rule books.", refused.get());
			}
			in.unknownWord(word, "The " + kind.label() + " has no field \"" + word.text() + "\".", OperandParser.names(kind));
		}
		return field;
	}

	private Test ofField(Token word, Field field) throws Lost {
		Position at = in.position(word);
		if (in.take("matches")) {
			return matches(field, at);
		}
		if (in.sees("in") || in.sees("not") && in.peek(1).is("in")) {
			boolean among = !in.take("not");
			in.next();
			return among(field, among, at);
		}
		Token sign = in.next();
		Optional<Comparison> comparison = java.util.Arrays.stream(Comparison.values())
				.filter(c -> sign.is(c.sign())).findFirst();
		if (comparison.isEmpty()) {
			in.fault(sign, "Here should be a comparison, not " + sign.shown() + ".",
					Vocabulary.remedyFor(sign.text()).orElse(sign.is("=") ? "Write == to compare."
							: "Write ==, !=, <, <=, > or >=, or in ( ... )."), sign.is("=") ? List.of("==") : List.of());
			throw new Lost();
		}
		return compare(field, comparison.get(), sign, at);
	}

	private Test compare(Field field, Comparison comparison, Token sign, Position at) throws Lost {
		boolean equality = comparison == Comparison.EQUAL || comparison == Comparison.NOT_EQUAL;
		if (in.sees("UNKNOWN")) {
			Token unknown = in.next();
			if (!equality) {
				in.fault(unknown, "Nothing is more or less than unknown.", "Write == UNKNOWN or != UNKNOWN.");
			}
			return new Test.IsUnknown(field, comparison == Comparison.EQUAL, at);
		}
		if (in.sees("null")) {
			in.fault(in.next(), "There is no null in rule books.", "Write UNKNOWN.", List.of("UNKNOWN"));
			return NONE;
		}
		if (!equality && !(field.domain() instanceof Domain.Whole || field.domain() instanceof Domain.Measure)) {
			in.fault(sign, field.label() + " has no order, so " + sign.text() + " makes no sense.", "Write == or != or in ( ... ).");
		}
		return operands.read(field.domain(), field.label() + " of the " + kind.label(), scope)
				.<Test>map(right -> new Test.Compare(field, comparison, right, at)).orElse(NONE);
	}

	private Test among(Field field, boolean among, Position at) throws Lost {
		in.expect("(", "Write the values in brackets: in ( A, B ).");
		List<Value> values = new ArrayList<>();
		do {
			operands.literal(field.domain(), field.label() + " of the " + kind.label()).ifPresent(values::add);
		} while (in.take(","));
		in.expect(")", "Separate the values by commas and close the bracket.");
		return new Test.Among(field, among, values, at);
	}

	private Test matches(Field field, Position at) throws Lost {
		Token quoted = in.expect(Token.Kind.QUOTED, "text in quotes", "Write matches \"...\".");
		if (!(field.domain() instanceof Domain.Words)) {
			in.fault(quoted, field.label() + " is not free text, so matches makes no sense.", "Write == or in ( ... ).");
			return NONE;
		}
		if (quoted.text().length() > LONGEST_EXPRESSION || quoted.text().matches(".*\\)[*+{].*|.*\\\\[1-9].*")) {
			in.fault(quoted, "This expression could take forever to match.",
					"Keep it under " + LONGEST_EXPRESSION + " characters, and do not repeat a group in brackets.");
			return NONE;
		}
		try {
			return new Test.Matches(field, Pattern.compile(quoted.text()), at);
		} catch (PatternSyntaxException wrong) {
			in.fault(quoted, "This is not a well-formed expression: " + wrong.getDescription() + ".",
					"Mend it, or write == \"...\".");
			return NONE;
		}
	}

	/** Skips the rest of a test whose field is unknown, so that the tests after it are still checked. */
	private Test passOver() {
		int depth = 0;
		while (!in.sees(Token.Kind.END) && !(depth == 0 && (in.sees(",") || in.sees(")") || in.sees("||") || in.sees("&&")))
				&& !in.sees("then") && !in.sees("end")) {
			Token token = in.next();
			depth += token.is("(") ? 1 : token.is(")") ? -1 : 0;
		}
		return NONE;
	}
}
