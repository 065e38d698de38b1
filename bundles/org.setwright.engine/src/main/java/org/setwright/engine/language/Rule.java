package org.setwright.engine.language;

import java.util.List;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Setting;

/**
 * One checked rule: every word in it is known to the catalogue. Rows of tables are rules too.
 *
 * @param name unique in the book
 * @param because why, in a sentence for the person in the van
 * @param source document, edition and place, or "common practice"
 * @param when all of these must hold
 * @param then what it proposes, finds and warns of; not empty
 * @param at where it begins
 * @param text as written
 */
public record Rule(String name, Authority authority, String because, String source, List<Condition> when,
		List<Action> then, Position at, String text) {
	public Rule {
		when = List.copyOf(when);
		then = List.copyOf(then);
	}

	/** @return what it proposes, in its own order */
	public List<Action.Propose> proposals() {
		return then.stream().filter(Action.Propose.class::isInstance).map(Action.Propose.class::cast).toList();
	}

	/** @return what it proposes for {@code setting}, in its own order */
	public List<Action.Propose> proposals(Setting setting) {
		return proposals().stream().filter(p -> p.setting().equals(setting)).toList();
	}
}
