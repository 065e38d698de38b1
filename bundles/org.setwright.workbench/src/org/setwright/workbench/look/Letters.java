package org.setwright.workbench.look;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts texts in the order in which a person would look for them. */
public final class Letters {
	private static final Pattern PART = Pattern.compile("\\d+(?:\\.\\d+)?|\\D+"); //$NON-NLS-1$

	private Letters() {
	}

	/** @return below 0 when {@code a} comes before {@code b}: by letters, whatever their case, and by the size of numbers in them */
	public static int compare(String a, String b) {
		Matcher mine = PART.matcher(a);
		Matcher its = PART.matcher(b);
		while (mine.find()) {
			if (!its.find()) {
				return 1;
			}
			int order = part(mine.group(), its.group());
			if (order != 0) {
				return order;
			}
		}
		return its.find() ? -1 : 0;
	}

	private static int part(String a, String b) {
		boolean numbers = Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0));
		return numbers ? new BigDecimal(a).compareTo(new BigDecimal(b)) : a.compareToIgnoreCase(b);
	}
}
