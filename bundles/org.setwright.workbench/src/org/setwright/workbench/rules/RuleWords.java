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
			+ "|(?<annotation>@\\w+)(?<said>\\s*\\(\\s*[^()\"'\\n]*\\))?" //$NON-NLS-1$
			+ "|(?<word>[$\\p{L}_][\\p{L}\\p{N}_]*)" //$NON-NLS-1$
			+ "|(?<number>\\d+(?:\\.\\d+)?)"); //$NON-NLS-1$

	private static final Pattern AUTHORITY = Pattern.compile("@authority\\s*\\(\\s*$"); //$NON-NLS-1$
	private static final Pattern SETTING = Pattern.compile("(?:propose\\s*\\(|\\{\\s*setting)\\s*$"); //$NON-NLS-1$
	private static final Pattern NAMED = Pattern.compile("[:.]\\s*$"); //$NON-NLS-1$
	private static final Pattern COMPARED = Pattern.compile("\\s*(?:[=!]=|[<>]|(?:not\\s+)?in\\s*\\(|matches\\b)"); //$NON-NLS-1$
	/** How far to look for what a word stands beside. */
	private static final int BESIDE = 40;
	private static final Pattern READING = Pattern.compile("\\{[^{}]*\\}"); //$NON-NLS-1$

	private RuleWords() {
	}

	/** @return what is to be coloured, in order; the rest stays plain */
	static List<Stretch> in(String text) {
		List<Stretch> stretches = new ArrayList<>();
		Matcher piece = PIECE.matcher(text);
		while (piece.find()) {
			if (piece.group("annotation") != null) { //$NON-NLS-1$
				annotation(piece, stretches);
				continue;
			}
			Ink ink = ink(piece, text);
			if (ink == Ink.STRING) {
				quoted(piece.group(), piece.start(), stretches);
			} else if (ink != Ink.TEXT) {
				stretches.add(new Stretch(piece.start(), piece.end() - piece.start(), ink));
			}
		}
		return stretches;
	}

	/** What an annotation says without quotation marks belongs to it; an authority is told apart from a reason. */
	private static void annotation(Matcher piece, List<Stretch> stretches) {
		stretch(piece.start(), piece.end("annotation") - piece.start(), Ink.ANNOTATION, stretches); //$NON-NLS-1$
		String said = piece.group("said"); //$NON-NLS-1$
		if (said != null && piece.group("annotation").equals("@authority")) { //$NON-NLS-1$ //$NON-NLS-2$
			String words = said.substring(said.indexOf('(') + 1, said.length() - 1);
			int start = piece.start("said") + said.indexOf('(') + 1 + words.length() - words.stripLeading().length(); //$NON-NLS-1$
			stretch(start, words.strip().length(), Ink.AUTHORITY, stretches);
		}
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

	private static Ink ink(Matcher piece, String text) {
		String before = text.substring(Math.max(0, piece.start() - BESIDE), piece.start());
		if (piece.group("comment") != null) { //$NON-NLS-1$
			return Ink.COMMENT;
		} else if (piece.group("string") != null) { //$NON-NLS-1$
			return AUTHORITY.matcher(before).find() ? Ink.AUTHORITY : Ink.STRING;
		} else if (piece.group("number") != null) { //$NON-NLS-1$
			return Ink.CONSTANT;
		}
		return word(piece.group(), before, text.substring(piece.end(), Math.min(text.length(), piece.end() + BESIDE)));
	}

	private static Ink word(String word, String before, String after) {
		if (KEYWORDS.contains(word)) {
			return Ink.KEYWORD;
		} else if (SETTING.matcher(before).find()) {
			return Ink.SETTING;
		} else if (word.length() > 1 && word.equals(word.toUpperCase(Locale.ROOT)) && Character.isLetter(word.charAt(0))) {
			return Ink.CONSTANT;
		} else if (Character.isUpperCase(word.charAt(0))) {
			return Ink.FACT;
		}
		boolean field = !word.startsWith("$") && (NAMED.matcher(before).find() || COMPARED.matcher(after).lookingAt()); //$NON-NLS-1$
		return field ? Ink.FIELD : Ink.TEXT;
	}
}
