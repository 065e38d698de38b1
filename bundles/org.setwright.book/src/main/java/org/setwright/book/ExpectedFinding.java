package org.setwright.book;

import java.util.Locale;

/**
 * A finding that a job case expects to be made, or not to be.
 *
 * @param appears whether it must be made; else it must not
 * @param name as people read it, "dual fuel job"; {@link #ANY} for any
 * @param other whether every finding is meant that the job does not expect
 * @param at where it stands in the file
 */
public record ExpectedFinding(boolean appears, String name, boolean other, Position at) implements ExpectedItem {
	public ExpectedFinding {
		name = label(name);
	}

	/** @return {@code name}, written as in a rule or in words, as people read it */
	static String label(String name) {
		return ExpectedItem.onALine(name.replace('_', ' ')).toLowerCase(Locale.ROOT);
	}

	/** @return its word in rules, "DUAL_FUEL_JOB" */
	public String word() {
		return name.replace(' ', '_').toUpperCase(Locale.ROOT);
	}

	/** For a finding that is named. @param word as in a rule @return whether it is the one meant */
	public boolean means(String word) {
		return name.equals(ANY) || name.equals(label(word));
	}

	@Override
	public ItemList list() {
		return appears ? ItemList.FINDINGS : ItemList.NO_FINDINGS;
	}

	@Override
	public String head() {
		return other ? ANY_OTHER : name;
	}

	@Override
	public String words() {
		return "";
	}

	@Override
	public ExpectedFinding in(ItemList list) {
		return new ExpectedFinding(list.appears(), name, other, at);
	}
}
