package org.setwright.engine.change;

import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;

/** Whether facts can come and go on site. */
final class Presence {
	private Presence() {
	}

	/**
	 * @return whether facts of {@code kind} may be found or fitted: nobody has said, or it is a kind of which at least one
	 *         answer can be changed on site (a wire can be pulled, a sensor fitted; an outdoor unit stays what it is)
	 */
	static boolean mayChange(Job job, FactKind kind) {
		return job.entry(kind).presence() == Job.Presence.UNKNOWN || kind.fields().stream().anyMatch(Field::changesOnSite);
	}
}
