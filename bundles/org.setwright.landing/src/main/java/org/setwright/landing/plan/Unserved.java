package org.setwright.landing.plan;

import java.util.List;
import org.setwright.landing.need.Need;

/** A need that no conductor serves. @param because why not, a sentence @param remedies the one to try first comes first; not empty */
public record Unserved(Need need, String because, String source, List<Remedy> remedies) {

	/** What would help. @param sentence what to do @param source where that comes from */
	public record Remedy(String sentence, String source) {
	}

	public Unserved {
		remedies = List.copyOf(remedies);
	}
}
