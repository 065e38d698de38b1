package org.setwright.engine.logic;

import java.util.HashMap;
import java.util.Map;
import org.setwright.engine.language.Operand;
import org.setwright.trade.catalogue.JobField;

/** The facts and answers that names stand for while one rule is tried. */
final class Bindings {
	private final Map<String, JobFacts.Item> facts = new HashMap<>();
	private final Map<String, JobFacts.Item> owners = new HashMap<>();

	void fact(String variable, JobFacts.Item item) {
		facts.put(variable, item);
	}

	void answer(String variable, JobFacts.Item owner) {
		owners.put(variable, owner);
	}

	/** @return the plain value of {@code operand}, or null when unknown */
	Object plain(Operand operand) {
		if (operand instanceof Operand.Literal literal) {
			return literal.value().plain();
		}
		Operand.Bound bound = (Operand.Bound) operand;
		return owner(bound).answer(bound.field());
	}

	/** @return where the answer of {@code bound} stands in the job */
	JobField place(Operand.Bound bound) {
		return owner(bound).place(bound.field());
	}

	private JobFacts.Item owner(Operand.Bound bound) {
		return (bound.ofFact() ? facts : owners).get(bound.variable());
	}
}
