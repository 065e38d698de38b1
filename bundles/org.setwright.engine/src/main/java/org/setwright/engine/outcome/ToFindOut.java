package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/**
 * Something worth looking up.
 *
 * @param holdsOpen the settings it could still change, in catalogue order
 * @param couldWarn the rules that would raise a serious caution, were they not held open by it
 */
public record ToFindOut(JobField unknown, List<Setting> holdsOpen, List<Rule> couldWarn) {
	public ToFindOut {
		holdsOpen = List.copyOf(holdsOpen);
		couldWarn = List.copyOf(couldWarn);
	}
}
