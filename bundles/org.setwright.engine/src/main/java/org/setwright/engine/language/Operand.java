package org.setwright.engine.language;

import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/** Where a value comes from. */
public sealed interface Operand {

	/** Written in the rule. */
	record Literal(Value value) implements Operand {
	}

	/**
	 * The answer of a field bound earlier: {@code $name} from {@code $name : field}, or {@code $fact.field}.
	 *
	 * @param variable with the dollar sign
	 * @param ofFact whether {@code variable} names a fact, and not an answer
	 */
	record Bound(String variable, boolean ofFact, FactKind kind, Field field) implements Operand {
	}
}
