package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.engine.language.Rule;
import org.setwright.engine.later.Later;

/** One way in which a rule's conditions held. @param why what {@link #reasons} come to once they are asked for */
public record Firing(Rule rule, Later<List<Reason>> why) {
	/** @return the reasons, one for each condition, in rule order */
	public List<Reason> reasons() {
		return why.get();
	}
}
