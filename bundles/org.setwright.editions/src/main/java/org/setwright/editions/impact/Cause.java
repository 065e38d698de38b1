package org.setwright.editions.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Changes that together bring a difference about, of which none can be left out. Each was tried by running the job.
 *
 * @param together one when it does so alone; not empty
 */
public record Cause(List<Culprit> together) {
	/** What is said when no mixture of changed rules brings a difference about, and the shop's own settings changed. */
	public static final List<Cause> OTHER_SETTINGS = List.of(new Cause(List.of(Culprit.SETTINGS)));

	public Cause {
		together = List.copyOf(together);
	}

	/** @return this together with {@code first} */
	Cause with(Culprit first) {
		List<Culprit> all = new ArrayList<>(List.of(first));
		all.addAll(together);
		return new Cause(all);
	}

	/** @return for people */
	public String shown() {
		return together.stream().map(Culprit::shown).collect(Collectors.joining(" together with "));
	}
}
