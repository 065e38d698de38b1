package org.setwright.engine.running;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.trade.catalogue.Catalogue;

/**
 * An amended book for the rule engine, of which only what may fire otherwise is compiled. A rule depends on the job and on the
 * findings it asks for, so every rule of which none of these may differ fires as it did in the book before; the others are
 * compiled together with all rules that make findings for them. Thread-safe.
 */
public final class Patched implements Decides {
	/** Compiling more than one rule in so many anew is not worth while: then all are. */
	private static final int WORTH_WHILE = 2;
	private final Decides before;
	private final int[] was;
	private final Decides changed;
	private final int[] now;

	private Patched(Decides before, int[] was, Decides changed, int[] now) {
		this.before = before;
		this.was = was;
		this.changed = changed;
		this.now = now;
	}

	/**
	 * @param before decides the book before
	 * @param rules of the amended book
	 * @param order theirs
	 * @param mayDiffer those of {@code rules} that may fire otherwise than before
	 * @param was the number that the rule with a number had before; asked only of those that do not differ
	 * @return what decides the amended book
	 */
	public static Decides of(Decides before, List<Rule> rules, FindingOrder order, Collection<Rule> mayDiffer, IntUnaryOperator was,
			Catalogue catalogue) {
		Set<Rule> anew = Collections.newSetFromMap(new IdentityHashMap<>());
		anew.addAll(mayDiffer);
		Set<Rule> needed = needed(mayDiffer, order);
		if (needed.size() * WORTH_WHILE > rules.size()) {
			return Program.compile(rules, order, catalogue);
		}
		int[] old = new int[rules.size()];
		int[] now = new int[rules.size()];
		int next = 0;
		for (int i = 0; i < rules.size(); i++) {
			old[i] = anew.contains(rules.get(i)) ? -1 : was.applyAsInt(i);
			now[i] = needed.contains(rules.get(i)) ? next++ : -1;
		}
		List<Rule> compiled = rules.stream().filter(needed::contains).toList();
		Decides changed = compiled.isEmpty() ? job -> new BitSet() : Program.compile(compiled, FindingOrder.of(compiled), catalogue);
		return new Patched(before, old, changed, now);
	}

	/** Those that may differ, and every rule that makes a finding which one of the needed rules asks for. */
	private static Set<Rule> needed(Collection<Rule> mayDiffer, FindingOrder order) {
		Set<Rule> needed = Collections.newSetFromMap(new IdentityHashMap<>());
		Deque<Rule> next = new ArrayDeque<>(mayDiffer);
		while (!next.isEmpty()) {
			Rule rule = next.poll();
			if (needed.add(rule)) {
				order.asked(rule).forEach(finding -> next.addAll(order.makers(finding)));
			}
		}
		return needed;
	}

	@Override
	public BitSet fired(JobFacts job) {
		BitSet old = before.fired(job);
		BitSet anew = changed.fired(job);
		BitSet fired = new BitSet();
		for (int i = 0; i < was.length; i++) {
			fired.set(i, was[i] < 0 ? anew.get(now[i]) : old.get(was[i]));
		}
		return fired;
	}
}
