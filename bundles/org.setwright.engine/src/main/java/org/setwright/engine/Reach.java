package org.setwright.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Setting;

/**
 * How far an amendment reaches: rules whose standing it can change on some job. All by number of the rule in the amended book.
 *
 * @param was the number each rule had before; -1 for a new one
 * @param open the rules whose standing may differ: those that may come out differently, and those that propose a setting with one
 *            of these, or with one that is gone
 * @param looked the rules that propose any setting of those open; what they propose decides
 */
record Reach(int[] was, BitSet open, BitSet looked) {

	/** @return the rules that may come out differently: new ones, and those that ask for a finding which may */
	static List<Rule> differing(Amendment amendment) {
		Set<String> findings = new HashSet<>();
		amendment.dropped().forEach(r -> findings.addAll(r.finds()));
		List<Rule> differing = new ArrayList<>();
		for (Rule rule : amendment.order().sequence()) {
			if (!amendment.kept().containsKey(rule) || !findings.isEmpty() && !Collections.disjoint(amendment.order().asked(rule), findings)) {
				differing.add(rule);
				findings.addAll(rule.finds());
			}
		}
		return differing;
	}

	static Reach of(Amendment amendment) {
		Map<Rule, Integer> numbers = new IdentityHashMap<>();
		amendment.before().forEach(r -> numbers.put(r, numbers.size()));
		List<Rule> rules = amendment.rules();
		int[] was = rules.stream().mapToInt(r -> amendment.kept().containsKey(r) ? numbers.get(amendment.kept().get(r)) : -1).toArray();
		Set<Rule> differing = Collections.newSetFromMap(new IdentityHashMap<>());
		differing.addAll(amendment.mayDiffer());
		Set<Setting> touched = settings(differing);
		touched.addAll(settings(amendment.dropped()));
		BitSet open = proposing(rules, touched);
		for (int i = 0; i < rules.size(); i++) {
			open.set(i, open.get(i) || differing.contains(rules.get(i)));
		}
		BitSet looked = proposing(rules, settings(open.stream().mapToObj(rules::get).toList()));
		looked.or(open);
		return new Reach(was, open, looked);
	}

	private static Set<Setting> settings(Iterable<Rule> rules) {
		Set<Setting> settings = Collections.newSetFromMap(new IdentityHashMap<>());
		rules.forEach(r -> each(r, settings::add));
		return settings;
	}

	private static BitSet proposing(List<Rule> rules, Set<Setting> settings) {
		BitSet proposing = new BitSet(rules.size());
		for (int i = 0; i < rules.size(); i++) {
			int number = i;
			each(rules.get(i), setting -> {
				if (settings.contains(setting)) {
					proposing.set(number);
				}
			});
		}
		return proposing;
	}

	private static void each(Rule rule, java.util.function.Consumer<Setting> setting) {
		for (Action action : rule.then()) {
			if (action instanceof Action.Propose propose) {
				setting.accept(propose.setting());
			}
		}
	}
}
