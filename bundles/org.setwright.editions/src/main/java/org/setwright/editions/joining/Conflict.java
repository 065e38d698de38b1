package org.setwright.editions.joining;

import java.util.Optional;
import org.setwright.editions.written.WrittenRule;

/**
 * Something both lines changed, each in its own way, so that a person has to choose. Immutable.
 *
 * @param what for people: the rule, row, setting of the shop's own, or file
 * @param path of its file, below the book
 * @param rule whether it is one rule, row or setting; a whole file otherwise
 * @param base as it was before both; empty when there was none
 * @param ours as it is here; empty when it is gone here
 * @param theirs as it is there; empty when it is gone there
 */
public record Conflict(String what, String path, boolean rule, Optional<String> base, Optional<String> ours, Optional<String> theirs) {

	static Conflict of(String path, Optional<WrittenRule> base, Optional<WrittenRule> ours, Optional<WrittenRule> theirs) {
		WrittenRule named = ours.or(() -> theirs).or(() -> base).orElseThrow();
		return new Conflict(named.shown(), path, true, base.map(WrittenRule::text), ours.map(WrittenRule::text), theirs.map(WrittenRule::text));
	}

	Conflict turned() {
		return new Conflict(what, path, rule, base, theirs, ours);
	}
}
