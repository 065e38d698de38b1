package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** The rules some question depends on, with all makers of findings they ask for, and everything they look at in a job. */
final class Slice {
	private final FindingOrder order;
	private final Catalogue catalogue;
	private final Map<Rule, Boolean> wanted = new IdentityHashMap<>();
	private final Set<FactKind> kinds = new LinkedHashSet<>();
	private final Map<Field, List<Test.OfField>> tests = new LinkedHashMap<>();
	private final Map<Field, FactKind> owners = new IdentityHashMap<>();
	private final Map<FactKind, Map<Field, List<Test.OfField>>> calculated = new LinkedHashMap<>();

	Slice(Collection<Rule> rules, FindingOrder order, Catalogue catalogue) {
		this.order = order;
		this.catalogue = catalogue;
		rules.forEach(this::add);
	}

	/** @return the stated kinds of fact looked at */
	Set<FactKind> kinds() {
		return kinds;
	}

	/** @return the stated fields of {@code kind} looked at, each with its tests; no tests when only a calculation reads it */
	Map<Field, List<Test.OfField>> tests(FactKind kind) {
		Map<Field, List<Test.OfField>> own = new LinkedHashMap<>();
		tests.forEach((field, t) -> {
			if (owners.get(field) == kind) {
				own.put(field, t);
			}
		});
		return own;
	}

	/** @return the calculated fields looked at, each with its tests, by kind of fact */
	Map<FactKind, Map<Field, List<Test.OfField>>> calculated() {
		return calculated;
	}

	private void add(Rule rule) {
		if (wanted.put(rule, true) == null) {
			rule.when().forEach(this::add);
		}
	}

	private void add(Condition condition) {
		if (condition instanceof Condition.Found found) {
			order.makers(found.finding()).forEach(this::add);
		} else if (condition instanceof Condition.Pattern pattern) {
			kind(pattern.kind());
			add(pattern.kind(), pattern.test());
		}
		condition.inner().forEach(this::add);
	}

	private void kind(FactKind kind) {
		if (!kind.calculated()) {
			kinds.add(kind);
		}
	}

	private void add(FactKind kind, Test test) {
		if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> add(kind, t));
		} else if (test instanceof Test.AnyOf any) {
			any.tests().forEach(t -> add(kind, t));
		} else {
			Test.OfField ofField = (Test.OfField) test;
			field(kind, ofField.field()).add(ofField);
			if (test instanceof Test.Compare compare && compare.right() instanceof Operand.Bound bound) {
				field(bound.kind(), bound.field());
			}
		}
	}

	/** Notes that a field is looked at. @return where its tests are collected */
	private List<Test.OfField> field(FactKind kind, Field field) {
		if (field.calculation().isPresent()) {
			field.calculation().get().from().forEach(this::source);
			return calculated.computeIfAbsent(kind, k -> new LinkedHashMap<>()).computeIfAbsent(field, f -> new ArrayList<>());
		}
		owners.put(field, kind);
		return tests.computeIfAbsent(field, f -> new ArrayList<>());
	}

	private void source(String kindAndField) {
		String[] words = kindAndField.split("\\.");
		FactKind kind = catalogue.kind(words[0]).orElseThrow();
		kind(kind);
		kind.field(words[1]).ifPresent(f -> field(kind, f));
	}
}
