package org.setwright.landing.plan;

import java.util.List;
import org.setwright.landing.need.Check;
import org.setwright.landing.need.Need;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.Setting;

/**
 * A conductor and what it is to do.
 *
 * @param choice why this conductor and no other, a sentence
 * @param source where that comes from
 * @param checks what has to be made sure of first; when not empty, the landing is conditional
 */
public record Landing(Conductor conductor, Need need, End atWall, End atEquipment, Change change, String choice, String source, List<Check> checks) {
	/** Whether something is changed. */
	public enum Change {
		/** It goes on doing what it did. */
		KEEP("keep"),
		/** It did something else, or its ends do not agree with what it is to do. */
		MOVE("move"),
		/** It was landed nowhere, or nobody knows where. */
		NEW("new");

		private final String label;

		Change(String label) {
			this.label = label;
		}

		/** @return for people */
		public String label() {
			return label;
		}
	}

	public Landing {
		checks = List.copyOf(checks);
	}

	/** @return the settings nobody has settled that could change it */
	public List<Setting> heldOpenBy() {
		return need.heldOpenBy();
	}

	/** @return whether it may be landed as it stands: nothing is left to check or to settle */
	public boolean isSure() {
		return checks.isEmpty() && heldOpenBy().isEmpty();
	}

	/** @return why: what it is needed for, and why this conductor */
	public String reason() {
		return need.because() + " " + choice;
	}
}
