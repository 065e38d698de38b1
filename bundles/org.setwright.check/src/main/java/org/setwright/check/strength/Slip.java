package org.setwright.check.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.setwright.book.Position;
import org.setwright.check.strength.Mistake.Kind;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.language.Comparison;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Value;

/** A mistake in one part of a rule. @param instead what the part becomes; empty when it is forgotten */
record Slip<T>(Kind kind, String sentence, Position at, Optional<T> instead) {

	/** The mistakes in each part of a list, and each part forgotten. */
	static <T> List<Slip<List<T>>> inAll(List<T> parts, Function<T, List<Slip<T>>> inPart, Function<T, Position> at) {
		List<Slip<List<T>>> slips = new ArrayList<>();
		for (int i = 0; i < parts.size(); i++) {
			int index = i;
			inPart.apply(parts.get(i)).forEach(s -> slips.add(new Slip<>(s.kind, s.sentence, s.at, Optional.of(with(parts, index, s.instead)))));
			slips.add(new Slip<>(Kind.CONDITION_DROPPED, "forgotten: " + words(parts.get(i)), at.apply(parts.get(i)),
					Optional.of(with(parts, i, Optional.empty()))));
		}
		return slips;
	}

	/** The mistakes in one condition, itself forgotten not among them. */
	static List<Slip<Condition>> inCondition(Condition condition) {
		if (condition instanceof Condition.Pattern p) {
			return inTest(p.test()).stream().map(s -> s.<Condition>as(t -> new Condition.Pattern(p.binding(), p.kind(), t, p.at()))).toList();
		} else if (condition instanceof Condition.All all) {
			return inAll(all.inner(), Slip::inCondition, Condition::at).stream().filter(s -> !s.instead.get().isEmpty())
					.map(s -> s.<Condition>as(inner -> new Condition.All(inner, all.at()))).toList();
		} else if (condition instanceof Condition.Either either) {
			return inAll(either.inner(), Slip::inCondition, Condition::at).stream().filter(s -> !s.instead.get().isEmpty())
					.map(s -> s.<Condition>as(inner -> new Condition.Either(inner, either.at()))).toList();
		} else if (condition instanceof Condition.Not not) {
			List<Slip<Condition>> slips = new ArrayList<>();
			slips.add(new Slip<>(Kind.COMPARISON_FLIPPED, Wording.of(not) + ", read without the not", not.at(),
					Optional.of(new Condition.Exists(not.negated(), not.at()))));
			inCondition(not.negated()).forEach(s -> slips.add(s.as(inner -> new Condition.Not(inner, not.at()))));
			return slips;
		} else if (condition instanceof Condition.Exists exists) {
			return inCondition(exists.sought()).stream().map(s -> s.<Condition>as(inner -> new Condition.Exists(inner, exists.at()))).toList();
		}
		return List.of();
	}

	private static List<Slip<Test>> inTest(Test test) {
		if (test instanceof Test.AllOf all) {
			return inAll(all.tests(), Slip::inTest, Slip::at).stream().map(s -> s.<Test>as(Test.AllOf::new)).toList();
		} else if (test instanceof Test.AnyOf any) {
			return inAll(any.tests(), Slip::inTest, Slip::at).stream().filter(s -> !s.instead.get().isEmpty())
					.map(s -> s.<Test>as(Test.AnyOf::new)).toList();
		} else if (test instanceof Test.Compare compare) {
			return inComparison(compare);
		} else if (test instanceof Test.Among among) {
			return inList(among);
		} else if (test instanceof Test.IsUnknown is) {
			return List.of(taken(Kind.COMPARISON_FLIPPED, is, new Test.IsUnknown(is.field(), !is.unknown(), is.at())));
		}
		return List.of();
	}

	private static List<Slip<Test>> inComparison(Test.Compare test) {
		List<Slip<Test>> slips = new ArrayList<>();
		slips.add(taken(Kind.COMPARISON_FLIPPED, test, with(test, opposite(test.comparison()), test.right())));
		Optional<Comparison> closer = closed(test.comparison());
		if (closer.isPresent() && test.field().domain() instanceof Domain.Measure) {
			slips.add(taken(Kind.BOUNDARY_MOVED, test, with(test, closer.get(), test.right())));
		}
		if (test.right() instanceof Operand.Literal literal) {
			Kind kind = closer.isPresent() ? Kind.BOUNDARY_MOVED : Kind.VALUE_EXCHANGED;
			for (Value other : Neighbours.of(test.field().domain(), literal.value())) {
				slips.add(taken(kind, test, with(test, test.comparison(), new Operand.Literal(other))));
			}
		}
		return slips;
	}

	private static List<Slip<Test>> inList(Test.Among test) {
		List<Slip<Test>> slips = new ArrayList<>();
		slips.add(taken(Kind.COMPARISON_FLIPPED, test, new Test.Among(test.field(), !test.among(), test.values(), test.at())));
		for (int i = 0; test.values().size() > 1 && i < test.values().size(); i++) {
			slips.add(taken(Kind.VALUE_EXCHANGED, test, new Test.Among(test.field(), test.among(), with(test.values(), i, Optional.empty()), test.at())));
		}
		return slips;
	}

	private static Test.Compare with(Test.Compare test, Comparison comparison, Operand right) {
		return new Test.Compare(test.field(), comparison, right, test.at());
	}

	private static Slip<Test> taken(Kind kind, Test.OfField is, Test.OfField mistaken) {
		return new Slip<>(kind, words(is) + ", taken for: " + Wording.wanted(mistaken), is.at(), Optional.of(mistaken));
	}

	private static Comparison opposite(Comparison comparison) {
		return switch (comparison) {
			case EQUAL -> Comparison.NOT_EQUAL;
			case NOT_EQUAL -> Comparison.EQUAL;
			case LESS -> Comparison.AT_LEAST;
			case AT_LEAST -> Comparison.LESS;
			case MORE -> Comparison.AT_MOST;
			case AT_MOST -> Comparison.MORE;
		};
	}

	/** The same comparison with the limit itself on the other side; empty when it has no limit. */
	private static Optional<Comparison> closed(Comparison comparison) {
		return switch (comparison) {
			case LESS -> Optional.of(Comparison.AT_MOST);
			case AT_MOST -> Optional.of(Comparison.LESS);
			case MORE -> Optional.of(Comparison.AT_LEAST);
			case AT_LEAST -> Optional.of(Comparison.MORE);
			default -> Optional.empty();
		};
	}

	private static Position at(Test test) {
		return test instanceof Test.OfField of ? of.at() : test instanceof Test.AllOf all ? at(all.tests().get(0)) : at(((Test.AnyOf) test).tests().get(0));
	}

	private static String words(Object part) {
		if (part instanceof Condition condition) {
			return Wording.of(condition);
		} else if (part instanceof Test.OfField test) {
			return test.field().label() + " " + Wording.wanted(test);
		}
		return part instanceof Test.AllOf all ? String.join(" and ", all.tests().stream().map(Slip::words).toList())
				: String.join(" or ", ((Test.AnyOf) part).tests().stream().map(Slip::words).toList());
	}

	private static <T> List<T> with(List<T> parts, int index, Optional<T> instead) {
		List<T> with = new ArrayList<>(parts);
		with.remove(index);
		instead.ifPresent(part -> with.add(index, part));
		return with;
	}

	private <U> Slip<U> as(Function<T, U> whole) {
		return new Slip<>(kind, sentence, at, instead.map(whole));
	}
}
