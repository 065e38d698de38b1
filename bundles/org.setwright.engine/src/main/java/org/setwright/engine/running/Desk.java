package org.setwright.engine.running;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.kie.api.runtime.KieSession;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;

/** Where rules report during one run. Public because the rule engine calls it; rules can reach nothing else. */
public final class Desk {
	private final List<Rule> rules;
	private final KieSession session;
	private final BitSet fired = new BitSet();
	private final Set<String> made = new HashSet<>();

	Desk(List<Rule> rules, KieSession session) {
		this.rules = rules;
		this.session = session;
	}

	/** Called when the conditions of the rule with this number certainly hold. */
	public void fired(int rule) {
		fired.set(rule);
		make(rule, true);
	}

	/** Called when they perhaps hold. */
	public void perhaps(int rule) {
		make(rule, false);
	}

	BitSet fired() {
		return fired;
	}

	private void make(int rule, boolean certain) {
		for (String finding : FindingOrder.made(rules.get(rule))) {
			if (made.add(finding + certain)) {
				session.insert(new Found(finding, certain));
			}
		}
	}
}
