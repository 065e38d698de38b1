package org.setwright.engine.change;

import java.util.List;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;

/**
 * One way to change a job so that it comes to what was asked; run and found to work before it is given.
 *
 * @param changes as few as possible; each is needed
 * @param onSite whether somebody on site can make it so, or it may turn out so
 * @param changed the job with the changes made
 * @param alsoChanges the other settings that come to something else
 */
public record Alternative(List<Change> changes, boolean onSite, Job changed, List<Setting> alsoChanges) {
	public Alternative {
		changes = List.copyOf(changes);
		alsoChanges = List.copyOf(alsoChanges);
	}
}
