package org.setwright.engine.language;

import java.util.List;
import java.util.Optional;
import org.setwright.book.Nearest;
import org.setwright.engine.language.TokenReader.Lost;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** Reads a value or the name of one: {@code 2}, {@code HEATING}, {@code $stages}, {@code $unit.stages}. */
final class OperandParser {
	private final TokenReader in;
	private final ValueReader values;

	OperandParser(TokenReader in) {
		this.in = in;
		values = new ValueReader(in);
	}

	/** Reads a written value only. @return empty when it is not one of {@code domain}; the problem is recorded */
	Optional<org.setwright.trade.catalogue.Value> literal(Domain domain, String of) throws Lost {
		return values.read(domain, of);
	}

	/** Reads a value for {@code domain}. @return empty when it does not fit; the problem is recorded */
	Optional<Operand> read(Domain domain, String of, Scope scope) throws Lost {
		if (!in.sees(Token.Kind.VARIABLE)) {
			return values.read(domain, of).map(Operand.Literal::new);
		}
		Token name = in.next();
		Optional<Operand.Bound> bound = bound(name, in.take(".") ? Optional.of(field(name)) : Optional.empty(), scope);
		if (bound.isPresent() && !fits(bound.get().field().domain(), domain)) {
			in.fault(name, bound.get().field().label() + " of the " + bound.get().kind().label() + " cannot be " + of + ".",
					"Use an answer that is " + domain.allowed() + ".");
			return Optional.empty();
		}
		return bound.map(b -> b);
	}

	/** Looks up {@code $name} or {@code $name.field}. @return empty when it has no meaning; the problem is recorded */
	Optional<Operand.Bound> bound(Token name, Optional<Token> field, Scope scope) {
		return field.isPresent() ? ofFact(name, field.get(), scope) : ofAnswer(name, scope);
	}

	private Token field(Token name) throws Lost {
		Token word = in.expect(Token.Kind.WORD, "a field", "Write $name.field, for example $unit.stages.");
		if (in.sees("(")) {
			return in.lose(word, "\"" + word.text() + "(\" is program code, and a rule cannot run any.",
					"Write only the field: " + name.text() + "." + word.text() + ".");
		}
		return word;
	}

	private Optional<Operand.Bound> ofFact(Token name, Token word, Scope scope) {
		Optional<FactKind> kind = scope.fact(name.text());
		if (kind.isEmpty()) {
			return unbound(name, scope);
		}
		Optional<Field> field = kind.get().field(word.text());
		if (field.isEmpty()) {
			in.unknownWord(word, "The " + kind.get().label() + " has no field \"" + word.text() + "\".", names(kind.get()));
		}
		return field.map(f -> new Operand.Bound(name.text(), true, kind.get(), f));
	}

	private Optional<Operand.Bound> ofAnswer(Token name, Scope scope) {
		Optional<Operand.Bound> bound = scope.answer(name.text());
		if (bound.isEmpty() && scope.fact(name.text()).isPresent()) {
			in.fault(name, name.text() + " is a whole fact, and a single answer is needed here.",
					"Add the field: " + name.text() + ".field.");
			return Optional.empty();
		}
		return bound.isEmpty() ? unbound(name, scope) : bound;
	}

	private <T> Optional<T> unbound(Token name, Scope scope) {
		in.fault(name, name.text() + " has not been given a meaning.", Nearest.to(name.text(), scope.names())
				.map(n -> "Did you mean " + n + "?")
				.orElse("Bind it in a pattern before: OutdoorUnit( " + name.text() + " : stages )."),
				Nearest.to(name.text(), scope.names()).stream().toList());
		return Optional.empty();
	}

	static List<String> names(FactKind kind) {
		return kind.fields().stream().map(Field::name).toList();
	}

	private static boolean fits(Domain given, Domain wanted) {
		if (given instanceof Domain.Choices g && wanted instanceof Domain.Choices w) {
			return w.options().containsAll(g.options());
		} else if (given instanceof Domain.Measure g && wanted instanceof Domain.Measure w) {
			return g.unit().dimension() == w.unit().dimension();
		}
		return given.getClass() == wanted.getClass();
	}
}
