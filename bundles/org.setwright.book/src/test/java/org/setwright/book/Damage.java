package org.setwright.book;

import java.util.List;
import java.util.Random;

/** Spoils a text a little, as bad disks, bad merges and bad people do. */
final class Damage {
	private static final int LONGEST = 20_000;
	private static final List<String> SIGNS = List.of("{", "}", "[", "]", ":", ": ", ",", "#", " #", "\"", "'", "\n", "\r\n", "\r", "\t", "- ", "? ",
			"|", "|\n", ">-\n", "&a ", "*a", "!t ", "!!binary ", "<<: ", "---\n", "...\n", "%YAML 1.2\n", "\\", "\0", "\uFEFF", "\u0085", "\u2028",
			"\uD835", "\uDED1", "\uD835\uDED1", "job", "none", "unknown", "fitted", "everything else", "not fitted:", "expect:", "~", "1e999", "-",
			"99999999999999999999", "\u0007", "  ", "a".repeat(600), "[".repeat(30), "\n- ".repeat(30), " ".repeat(2000));

	private Damage() {
	}

	static String to(String text, Random random) {
		int from = random.nextInt(text.length() + 1);
		int to = Math.min(text.length(), from + random.nextInt(1 + random.nextInt(40)));
		String part = text.substring(from, to);
		String sign = SIGNS.get(random.nextInt(SIGNS.size()));
		String spoilt = switch (random.nextInt(6)) {
			case 0 -> text.substring(0, from) + text.substring(to);
			case 1 -> text.substring(0, from) + part + part + text.substring(to);
			case 2 -> text.substring(0, from) + sign + text.substring(to);
			case 3 -> text.substring(0, from) + (char) random.nextInt(random.nextBoolean() ? 128 : 65536) + text.substring(from);
			case 4 -> random.nextInt(20) == 0 ? text.substring(0, from) : text.substring(from) + text.substring(0, from);
			default -> text.substring(0, from) + sign + text.substring(from);
		};
		return spoilt.substring(0, Math.min(LONGEST, spoilt.length()));
	}
}
