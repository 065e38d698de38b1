package org.setwright.bench.completing;

/**
 * Something that could be typed.
 *
 * @param from offset in what was typed from which it replaces what stands up to the cursor
 * @param text what to put there
 * @param meaning what it means, one sentence; may be empty
 * @param goesOn whether something has to follow, so that no blank is wanted at the end
 */
public record Offer(int from, String text, String meaning, boolean goesOn) {
}
