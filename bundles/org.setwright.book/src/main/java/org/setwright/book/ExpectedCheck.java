package org.setwright.book;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.setwright.trade.catalogue.StartUpPhase;

/**
 * A start-up check that a job case expects to be needed, perhaps needed, or not needed.
 *
 * @param list which of the three
 * @param phase the part of the start-up it belongs to; empty for any
 * @param words part of what it says, whatever the capitals; or, with {@code byRule}, the name of a rule that asks for it
 * @param byRule whether it is named by its rule alone
 * @param other whether every check is meant that the job does not expect
 * @param at where it stands in the file
 */
public record ExpectedCheck(ItemList list, Optional<StartUpPhase> phase, String words, boolean byRule, boolean other, Position at)
		implements ExpectedItem {
	/** Instead of a part of the start-up: the rule's name follows. */
	static final String BY = ExpectationText.BY;

	public ExpectedCheck {
		words = ExpectedItem.onALine(words);
		if (list.topic() != ItemList.Topic.START_UP) {
			throw new IllegalArgumentException("no list of start-up checks: " + list);
		}
	}

	/** @return one that is named by the rule that asks for it */
	public static ExpectedCheck by(ItemList list, String rule, Position at) {
		return new ExpectedCheck(list, Optional.empty(), rule, true, false, at);
	}

	/**
	 * For a check that is named.
	 *
	 * @param lines what the check says, in any units, each {@link #plain}; asked for only when they are needed
	 * @param rules the names of the rules that ask for it
	 * @return whether it is the one meant
	 */
	public boolean means(StartUpPhase otherPhase, Supplier<? extends Collection<String>> lines, Collection<String> rules) {
		if (byRule) {
			return rules.stream().anyMatch(r -> ExpectedItem.onALine(r).equals(words));
		}
		String part = plain(words);
		return phase.filter(p -> p != otherPhase).isEmpty() && (part.isEmpty() || lines.get().stream().anyMatch(l -> l.contains(part)));
	}

	/** @return {@code line} as it is compared */
	public static String plain(String line) {
		return ExpectedItem.onALine(line).toLowerCase(Locale.ROOT);
	}

	@Override
	public String head() {
		return other ? ANY_OTHER : byRule ? BY : phase.map(StartUpPhase::label).orElse(ANY);
	}

	@Override
	public ExpectedCheck in(ItemList otherList) {
		return new ExpectedCheck(otherList, phase, words, byRule, other, at);
	}
}
