package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.engine.language.Rule;

/** One way in which a rule's conditions held. @param reasons one for each condition, in rule order */
public record Firing(Rule rule, List<Reason> reasons) {
	public Firing {
		reasons = List.copyOf(reasons);
	}
}
