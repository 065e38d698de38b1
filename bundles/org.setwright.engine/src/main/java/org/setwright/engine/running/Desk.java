package org.setwright.engine.running;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.Match;

/**
 * Where rules report during one run: a rule whose conditions hold is noted before it acts, and only those that make findings
 * have anything to do after that. Public because the rule engine calls it; rules can reach nothing else.
 */
public final class Desk implements AgendaFilter {
	private final List<List<String>> finds;
	private final KieSession session;
	private final BitSet fired = new BitSet();
	private final Set<String> made = new HashSet<>();

	/** @param finds the findings each rule makes */
	Desk(List<List<String>> finds, KieSession session) {
		this.finds = finds;
		this.session = session;
	}

	/** Called for each rule whose conditions hold. @return whether it makes a finding, so that its consequence has to run */
	@Override
	public boolean accept(Match match) {
		String name = match.getRule().getName();
		boolean certain = !name.endsWith(DrlWriter.PERHAPS);
		int rule = Integer.parseInt(certain ? name : name.substring(0, name.length() - DrlWriter.PERHAPS.length()));
		if (certain) {
			fired.set(rule);
		}
		return !finds.get(rule).isEmpty();
	}

	/** Called when the conditions of the rule with this number, which makes findings, certainly hold. */
	public void fired(int rule) {
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
		for (String finding : finds.get(rule)) {
			if (made.add(finding + certain)) {
				session.insert(new Found(finding, certain));
			}
		}
	}
}
