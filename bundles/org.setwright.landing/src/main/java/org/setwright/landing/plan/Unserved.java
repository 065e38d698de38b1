package org.setwright.landing.plan;

import java.util.List;
import org.setwright.landing.need.Need;

/**
 * A need that no conductor serves; of a pair the first part stands for both.
 *
 * @param because why not, a sentence
 * @param remedies the one to try first comes first; not empty
 */
public record Unserved(Need need, String because, String source, List<Remedy> remedies) {

	/** What would help. @param sentence what to do @param source where that comes from */
	public record Remedy(String sentence, String source) {
	}

	/** @return for people: "outdoor sensor, 2 conductors" */
	public String label() {
		return need.duty().label() + (need.of() == 1 ? "" : ", " + need.of() + " conductors");
	}

	public Unserved {
		remedies = List.copyOf(remedies);
	}
}
