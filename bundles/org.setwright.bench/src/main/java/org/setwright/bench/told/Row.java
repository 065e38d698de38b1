package org.setwright.bench.told;

/**
 * One row of an answer; it belongs to the nearest row above it that is less deep.
 *
 * @param depth from 0
 * @param tone how it stands out
 * @param words never blank
 * @param at where in the book it stands; empty when nowhere
 */
public record Row(int depth, Tone tone, String words, String at) {
	/** @return where it stands, to follow the words */
	public String place() {
		return at.isEmpty() ? "" : "   [" + at + "]";
	}

	/** @return the same one deeper */
	public Row deeper() {
		return new Row(depth + 1, tone, words, at);
	}
}
