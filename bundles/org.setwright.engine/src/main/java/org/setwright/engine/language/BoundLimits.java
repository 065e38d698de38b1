package org.setwright.engine.language;

import java.util.List;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/** Which values a bound answer can still have after the tests of the pattern that binds it. */
final class BoundLimits {
	private BoundLimits() {
	}

	/** @return the domain of {@code bound}, narrowed by the tests that must hold where it is bound */
	static Domain of(Operand.Bound bound, List<Condition> when) {
		return when.stream().filter(Condition.Pattern.class::isInstance).map(Condition.Pattern.class::cast)
				.filter(p -> binds(p, bound)).findFirst().map(p -> narrowed(bound.field().domain(), p.test(), bound))
				.orElse(bound.field().domain());
	}

	private static boolean binds(Condition.Pattern pattern, Operand.Bound bound) {
		return bound.ofFact() ? pattern.binding().filter(bound.variable()::equals).isPresent()
				: binds(pattern.test(), bound.variable());
	}

	private static boolean binds(Test test, String variable) {
		return test instanceof Test.Bind bind && bind.variable().equals(variable)
				|| test instanceof Test.AllOf all && all.tests().stream().anyMatch(t -> binds(t, variable));
	}

	private static Domain narrowed(Domain domain, Test test, Operand.Bound bound) {
		if (test instanceof Test.AllOf all) {
			Domain narrowed = domain;
			for (Test inner : all.tests()) {
				narrowed = narrowed(narrowed, inner, bound);
			}
			return narrowed;
		}
		return test instanceof Test.Compare compare && compare.field().equals(bound.field())
				&& compare.right() instanceof Operand.Literal literal ? narrowed(domain, compare.comparison(), literal.value()) : domain;
	}

	private static Domain narrowed(Domain domain, Comparison comparison, Value value) {
		boolean fromBelow = comparison == Comparison.MORE || comparison == Comparison.AT_LEAST || comparison == Comparison.EQUAL;
		boolean fromAbove = comparison == Comparison.LESS || comparison == Comparison.AT_MOST || comparison == Comparison.EQUAL;
		if (domain instanceof Domain.Measure measure && value instanceof Value.Amount amount) {
			Quantity limit = amount.quantity().to(measure.unit());
			return new Domain.Measure(measure.unit(), fromBelow ? Math.max(measure.least(), limit.number()) : measure.least(),
					fromAbove ? Math.min(measure.most(), limit.number()) : measure.most());
		} else if (domain instanceof Domain.Whole whole && value instanceof Value.Count count) {
			return new Domain.Whole(fromBelow ? Math.max(whole.least(), count.number()) : whole.least(),
					fromAbove ? Math.min(whole.most(), count.number()) : whole.most());
		}
		return domain;
	}
}
