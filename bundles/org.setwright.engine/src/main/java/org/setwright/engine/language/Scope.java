package org.setwright.engine.language;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** The names bound so far in a rule. An inner scope sees the outer one; what it binds ends with it. */
final class Scope {
	private final Scope outer;
	private final Map<String, FactKind> facts = new LinkedHashMap<>();
	private final Map<String, Operand.Bound> answers = new LinkedHashMap<>();

	Scope(Scope outer) {
		this.outer = outer;
	}

	Optional<FactKind> fact(String variable) {
		FactKind kind = facts.get(variable);
		return kind != null || outer == null ? Optional.ofNullable(kind) : outer.fact(variable);
	}

	Optional<Operand.Bound> answer(String variable) {
		Operand.Bound bound = answers.get(variable);
		return bound != null || outer == null ? Optional.ofNullable(bound) : outer.answer(variable);
	}

	boolean knows(String variable) {
		return fact(variable).isPresent() || answer(variable).isPresent();
	}

	void bindFact(String variable, FactKind kind) {
		facts.put(variable, kind);
	}

	void bindAnswer(String variable, FactKind kind, Field field) {
		answers.put(variable, new Operand.Bound(variable, false, kind, field));
	}

	/** @return every name in sight */
	java.util.List<String> names() {
		java.util.List<String> all = new java.util.ArrayList<>(facts.keySet());
		all.addAll(answers.keySet());
		if (outer != null) {
			all.addAll(outer.names());
		}
		return all;
	}
}
