package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
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

	/** @return the findings it makes, each once, in its own order */
	public List<String> finds() {
		List<String> finds = actions(Action.Find.class, find -> List.of(find.finding()));
		return finds.size() < 2 ? finds : finds.stream().distinct().toList();
	}

	/** @return the answers it proposes as they stand; while one is unknown the rule is held open */
	public List<Operand.Bound> used() {
		return actions(Action.Propose.class, propose -> propose.value() instanceof Operand.Bound bound ? List.of(bound) : List.of());
	}

	/** @return the answers its start-up checks show; they may be unknown */
	public List<Operand.Bound> shown() {
		return actions(Action.StartUp.class, Action.StartUp::readings);
	}

	/** @return what it proposes, in its own order */
	public List<Action.Propose> proposals() {
		return actions(Action.Propose.class, List::of);
	}

	/** @return what it proposes for {@code setting}, in its own order */
	public List<Action.Propose> proposals(Setting setting) {
		return proposals().stream().filter(p -> p.setting().equals(setting)).toList();
	}

	/** Asked for every rule that speaks on every job, so without ado. */
	private <A extends Action, T> List<T> actions(Class<A> kind, Function<A, List<T>> of) {
		List<T> all = List.of();
		for (Action action : then) {
			if (kind.isInstance(action)) {
				List<T> more = of.apply(kind.cast(action));
				if (all.isEmpty()) {
					all = more;
				} else if (!more.isEmpty()) {
					all = new ArrayList<>(all);
					all.addAll(more);
				}
			}
		}
		return all;
	}
}
