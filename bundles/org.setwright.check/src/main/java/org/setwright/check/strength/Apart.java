package org.setwright.check.strength;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.engine.language.Comparison;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Value;

/**
 * Proves that two rules can never speak on the same job: somewhere their conditions contradict each other. Whenever one of the
 * two speaks, the other one is certainly out and not merely held open; so an unknown answer, which holds a test of it open, is
 * no contradiction. Finding none proves nothing.
 */
final class Apart {
	private final FindingOrder findings;

	/** @param rules the whole book */
	Apart(Collection<Rule> rules) {
		findings = FindingOrder.of(rules);
	}

	/** @return whether no job lets both speak */
	boolean never(Rule one, Rule other) {
		return contradict(new Condition.All(one.when(), one.at()), new Condition.All(other.when(), other.at()));
	}

	private boolean contradict(Condition one, Condition other) {
		Optional<List<Condition>> parts = together(one);
		if (parts.isPresent()) {
			return parts.get().stream().anyMatch(part -> contradict(part, other));
		} else if (together(other).isPresent()) {
			return together(other).get().stream().anyMatch(part -> contradict(one, part));
		} else if (oneOf(one).isPresent()) {
			return oneOf(one).get().stream().allMatch(part -> contradict(part, other));
		} else if (oneOf(other).isPresent()) {
			return oneOf(other).get().stream().allMatch(part -> contradict(one, part));
		}
		return plain(one, other) || plain(other, one);
	}

	/** The conditions that all hold when {@code condition} does; a finding is left whole, so that its absence contradicts it. */
	private static Optional<List<Condition>> together(Condition condition) {
		return condition instanceof Condition.All all ? Optional.of(all.inner())
				: condition instanceof Condition.Exists exists ? Optional.of(List.of(exists.sought())) : Optional.empty();
	}

	private static Optional<List<Condition>> oneOf(Condition condition) {
		return condition instanceof Condition.Either either ? Optional.of(either.inner()) : Optional.empty();
	}

	private boolean plain(Condition one, Condition other) {
		if (one instanceof Condition.Found found) {
			return other instanceof Condition.Not not && not.negated() instanceof Condition.Found same && same.finding().equals(found.finding())
					|| findings.makers(found.finding()).stream().allMatch(maker -> contradict(new Condition.All(maker.when(), maker.at()), other));
		}
		return one instanceof Condition.Pattern pattern && contradicts(other, pattern);
	}

	private static boolean contradicts(Condition other, Condition.Pattern pattern) {
		if (other instanceof Condition.Not not) {
			return not.negated() instanceof Condition.Pattern none && none.kind().equals(pattern.kind()) && none.test().equals(new Test.AllOf(List.of()));
		}
		return other instanceof Condition.Pattern second && second.kind().equals(pattern.kind()) && !pattern.kind().many()
				&& contradict(pattern.test(), second.test());
	}

	/** Two tests of the same fact. */
	private static boolean contradict(Test one, Test other) {
		if (one instanceof Test.AllOf all) {
			return all.tests().stream().anyMatch(t -> contradict(t, other));
		} else if (other instanceof Test.AllOf all) {
			return all.tests().stream().anyMatch(t -> contradict(one, t));
		} else if (one instanceof Test.AnyOf any) {
			return any.tests().stream().allMatch(t -> contradict(t, other));
		} else if (other instanceof Test.AnyOf any) {
			return any.tests().stream().allMatch(t -> contradict(one, t));
		}
		Test.OfField a = (Test.OfField) one;
		Test.OfField b = (Test.OfField) other;
		return a.field().equals(b.field()) && disjoint(a, b);
	}

	private static boolean disjoint(Test.OfField one, Test.OfField other) {
		Optional<Set<Object>> left = passing(one);
		Optional<Set<Object>> right = passing(other);
		return left.isPresent() && right.isPresent() ? left.get().stream().noneMatch(right.get()::contains) : below(one, other) || below(other, one);
	}

	/** The values that pass, where all values can be listed. */
	private static Optional<Set<Object>> passing(Test.OfField test) {
		Domain domain = test.field().domain();
		if (test instanceof Test.Among among) {
			List<Value> values = among.among() ? among.values() : without(domain, among.values());
			return among.among() || domain instanceof Domain.Choices ? Optional.of(plain(values)) : Optional.empty();
		} else if (test instanceof Test.Compare compare && compare.right() instanceof Operand.Literal literal) {
			boolean listed = domain instanceof Domain.Choices || domain instanceof Domain.YesNo;
			return compare.comparison() == Comparison.EQUAL ? Optional.of(plain(List.of(literal.value())))
					: compare.comparison() == Comparison.NOT_EQUAL && listed ? Optional.of(plain(without(domain, List.of(literal.value())))) : Optional.empty();
		}
		return Optional.empty();
	}

	private static List<Value> without(Domain domain, List<Value> values) {
		List<Value> others = new ArrayList<>(domain.listed());
		others.removeIf(o -> values.stream().anyMatch(o::same));
		return others;
	}

	private static Set<Object> plain(List<Value> values) {
		return values.stream().map(Value::plain).collect(Collectors.toSet());
	}

	/** Whether all that passes {@code low} lies below all that passes {@code high}. */
	private static boolean below(Test.OfField low, Test.OfField high) {
		Optional<Double> most = limit(low, Set.of(Comparison.LESS, Comparison.AT_MOST, Comparison.EQUAL));
		Optional<Double> least = limit(high, Set.of(Comparison.MORE, Comparison.AT_LEAST, Comparison.EQUAL));
		if (most.isEmpty() || least.isEmpty()) {
			return false;
		}
		boolean touching = ((Test.Compare) low).comparison() != Comparison.LESS && ((Test.Compare) high).comparison() != Comparison.MORE;
		return most.get() < least.get() || most.get().equals(least.get()) && !touching;
	}

	private static Optional<Double> limit(Test.OfField test, Set<Comparison> comparisons) {
		return test instanceof Test.Compare compare && comparisons.contains(compare.comparison()) && compare.right() instanceof Operand.Literal literal
				&& literal.value().plain() instanceof Number number ? Optional.of(number.doubleValue()) : Optional.empty();
	}
}
