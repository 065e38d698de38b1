package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/** Something worth looking up. @param holdsOpen the settings it could still change, in catalogue order; not empty */
public record ToFindOut(JobField unknown, List<Setting> holdsOpen) {
	public ToFindOut {
		holdsOpen = List.copyOf(holdsOpen);
	}
}
