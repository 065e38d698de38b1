package org.setwright.command.terminal;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.Map;

/** Makes text fit to be shown: no control characters ever, and plain ASCII where nothing else can be shown. */
final class Letters {
	private static final Map<String, String> IN_ASCII = new LinkedHashMap<>();
	static {
		IN_ASCII.put("F°", "F");
		IN_ASCII.put("C°", "C");
		IN_ASCII.put("°", "deg");
		IN_ASCII.put("×", "x");
		IN_ASCII.put("≥", ">=");
		IN_ASCII.put("≤", "<=");
		IN_ASCII.put("…", "...");
		IN_ASCII.put("–", "-");
		IN_ASCII.put("—", "-");
		IN_ASCII.put("‘", "'");
		IN_ASCII.put("’", "'");
		IN_ASCII.put("“", "\"");
		IN_ASCII.put("”", "\"");
	}

	private Letters() {
	}

	/** @return {@code text} with single blanks, and control characters (which could steer a terminal) shown as question marks */
	static String harmless(String text) {
		return asTyped(text.replaceAll("\\s+", " "));
	}

	/** @return the same with every blank kept, so that what stands below it can point into it; a tab is one blank */
	static String asTyped(String text) {
		return text.replaceAll("\\s", " ").replaceAll("[\\p{Cc}\\p{Cf}]", "?");
	}

	/** @return {@code text} in ASCII; units in a spelling that job files accept, letters without their accents */
	static String ascii(String text) {
		String plain = text;
		for (var letter : IN_ASCII.entrySet()) {
			plain = plain.replace(letter.getKey(), letter.getValue());
		}
		return Normalizer.normalize(plain, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "").replaceAll("[^\\x20-\\x7e]", "?");
	}
}
