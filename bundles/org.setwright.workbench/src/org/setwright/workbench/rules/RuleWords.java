package org.setwright.workbench.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.workbench.look.ColouredText.Stretch;
import org.setwright.workbench.look.Palette.Ink;

/** Finds in the text of rules what is to be coloured. */
final class RuleWords {
	private static final Set<String> KEYWORDS = Set.of("rule", "when", "then", "end", "not", "exists", "or", "and", "in", "matches", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$ //$NON-NLS-9$ //$NON-NLS-10$
			"propose", "find", "caution", "startUp"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
	private static final Pattern PIECE = Pattern.compile("(?<comment>//[^\\n]*|/\\*(?s:.*?)(?:\\*/|\\z))" //$NON-NLS-1$
			+ "|(?<string>\"(?:\\\\.|[^\"\\\\\\n])*\"?)" //$NON-NLS-1$
			+ "|(?<annotation>@\\w+)" //$NON-NLS-1$
			+ "|(?<word>[$\\p{L}_][\\p{L}\\p{N}_]*)" //$NON-NLS-1$
			+ "|(?<number>\\d+(?:\\.\\d+)?)"); //$NON-NLS-1$

	private static final Pattern READING = Pattern.compile("\\{[^{}]*\\}"); //$NON-NLS-1$

	private RuleWords() {
	}

	/** @return what is to be coloured, in order; the rest stays plain */
	static List<Stretch> in(String text) {
		List<Stretch> stretches = new ArrayList<>();
		Matcher piece = PIECE.matcher(text);
		while (piece.find()) {
			Ink ink = ink(piece);
			if (ink == Ink.STRING) {
				quoted(piece.group(), piece.start(), stretches);
			} else if (ink != Ink.TEXT) {
				stretches.add(new Stretch(piece.start(), piece.end() - piece.start(), ink));
			}
		}
		return stretches;
	}

	/** Readings between braces stand out from the words around them. */
	private static void quoted(String text, int start, List<Stretch> stretches) {
		Matcher reading = READING.matcher(text);
		int from = 0;
		while (reading.find()) {
			stretch(start + from, reading.start() - from, Ink.STRING, stretches);
			stretch(start + reading.start(), reading.end() - reading.start(), Ink.CONSTANT, stretches);
			from = reading.end();
		}
		stretch(start + from, text.length() - from, Ink.STRING, stretches);
	}

	private static void stretch(int start, int length, Ink ink, List<Stretch> stretches) {
		if (length > 0) {
			stretches.add(new Stretch(start, length, ink));
		}
	}

	private static Ink ink(Matcher piece) {
		if (piece.group("comment") != null) { //$NON-NLS-1$
			return Ink.COMMENT;
		} else if (piece.group("string") != null) { //$NON-NLS-1$
			return Ink.STRING;
		} else if (piece.group("annotation") != null) { //$NON-NLS-1$
			return Ink.ANNOTATION;
		} else if (piece.group("number") != null) { //$NON-NLS-1$
			return Ink.CONSTANT;
		}
		return word(piece.group());
	}

	private static Ink word(String word) {
		if (KEYWORDS.contains(word)) {
			return Ink.KEYWORD;
		} else if (word.length() > 1 && word.equals(word.toUpperCase(Locale.ROOT)) && Character.isLetter(word.charAt(0))) {
			return Ink.CONSTANT;
		}
		return Character.isUpperCase(word.charAt(0)) ? Ink.FACT : Ink.TEXT;
	}
}
