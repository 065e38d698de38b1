package org.setwright.workbench.jobform;

/**
 * The smallest single replacement that turns one text into another.
 *
 * @param offset where it begins, from 0
 * @param length how many characters go
 * @param replacement what comes in their place
 */
record TextChange(int offset, int length, String replacement) {

	static TextChange between(String before, String after) {
		int shorter = Math.min(before.length(), after.length());
		int start = 0;
		while (start < shorter && before.charAt(start) == after.charAt(start)) {
			start++;
		}
		int end = 0;
		while (end < shorter - start
				&& before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
			end++;
		}
		return new TextChange(start, before.length() - start - end, after.substring(start, after.length() - end));
	}
}
