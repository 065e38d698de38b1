package org.setwright.engine.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** Writes the conditions of one rule. */
final class SyntheticConditions {
	private static final List<FactKind> KINDS = Trade.catalogue().kinds().stream().filter(k -> !k.calculated()).toList();
	private static final int MOST_LISTS = 2;

	private final Random random;
	private final List<String> findings;
	private final boolean makesFinding;
	private int lists;

	/** @param findings those that earlier rules make @param makesFinding such a rule does not ask whether one is missing */
	SyntheticConditions(Random random, List<String> findings, boolean makesFinding) {
		this.random = random;
		this.findings = findings;
		this.makesFinding = makesFinding;
	}

	/** @return from one to three conditions */
	List<String> some() {
		List<String> conditions = new ArrayList<>();
		if (!findings.isEmpty() && random.nextInt(3) == 0) {
			String found = "Finding( name == " + findings.get(random.nextInt(findings.size())) + " )";
			conditions.add(!makesFinding && random.nextInt(10) == 0 ? "not " + found : found);
		}
		if (random.nextInt(12) == 0) {
			conditions.addAll(joined());
		} else {
			conditions.add(one());
		}
		if (random.nextInt(10) < 4 && conditions.size() < 3) {
			conditions.add(one());
		}
		return conditions;
	}

	private String one() {
		int pick = random.nextInt(16);
		return pick == 0 ? "( " + pattern(1) + " or " + pattern(1) + " )"
				: pick < 3 ? "not " + pattern(random.nextInt(2))
				: pick == 3 ? "exists " + pattern(1) : pattern(1 + random.nextInt(5) / 3);
	}

	private FactKind kind() {
		FactKind kind = KINDS.get(random.nextInt(KINDS.size()));
		while (kind.many() && lists == MOST_LISTS) {
			kind = KINDS.get(random.nextInt(KINDS.size()));
		}
		lists += kind.many() ? 1 : 0;
		return kind;
	}

	private String pattern(int tests) {
		FactKind kind = kind();
		List<String> written = new ArrayList<>();
		for (int i = 0; i < tests; i++) {
			written.add(random.nextInt(12) == 0 ? test(kind) + " || " + test(kind) : test(kind));
		}
		return kind.name() + "( " + String.join(", ", written) + " )";
	}

	/** Two facts with an answer in common, such as two ends of conductors that carry the same letter. */
	private List<String> joined() {
		FactKind one = kind();
		Field given = one.fields().get(random.nextInt(one.fields().size()));
		FactKind other = kind();
		List<Field> alike = other.fields().stream().filter(f -> f.domain().equals(given.domain())).toList();
		if (alike.isEmpty()) {
			return List.of(one.name() + "( " + test(one) + " )", other.name() + "( " + test(other) + " )");
		}
		Field asked = alike.get(random.nextInt(alike.size()));
		return List.of(one.name() + "( $answer : " + given.name() + ", " + test(one) + " )",
				other.name() + "( " + asked.name() + (random.nextInt(4) == 0 ? " != " : " == ") + "$answer )");
	}

	private String test(FactKind kind) {
		Field field = kind.fields().get(random.nextInt(kind.fields().size()));
		Domain domain = field.domain();
		if (domain instanceof Domain.Whole || domain instanceof Domain.Measure) {
			List<String> signs = List.of("<", "<=", ">", ">=", "==");
			return field.name() + " " + signs.get(random.nextInt(signs.size())) + " " + any(domain);
		} else if (domain instanceof Domain.Words && random.nextInt(4) == 0) {
			return field.name() + " matches \"[A-Z].* Air\"";
		} else if (domain instanceof Domain.Choices && random.nextInt(3) == 0) {
			return field.name() + (random.nextInt(4) == 0 ? " not in ( " : " in ( ") + any(domain) + ", " + any(domain) + " )";
		}
		return field.name() + (random.nextInt(8) == 0 ? " != " : " == ") + any(domain);
	}

	private String any(Domain domain) {
		return Answers.written(Answers.any(domain, random));
	}
}
