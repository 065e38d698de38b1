package org.setwright.picture;

import java.util.List;
import org.setwright.engine.outcome.SettingOutcome;

/**
 * What a setting rests on: job fields, calculations and findings, rules, proposals, the setting.
 *
 * @param nodes each once; the setting is the last
 * @param links from what is rested on to what rests on it, each once
 */
public record Derivation(List<Node> nodes, List<Link> links) {
	public Derivation {
		nodes = List.copyOf(nodes);
		links = List.copyOf(links);
	}

	/** One thing rests on another. @param from what is rested on @param to what rests on it, both numbers of nodes */
	public record Link(int from, int to) {
	}

	/** @return what {@code outcome} rests on */
	public static Derivation of(SettingOutcome outcome) {
		return new Deriving().of(outcome);
	}
}
