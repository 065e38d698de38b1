package org.setwright.bench.words;

import java.util.Locale;
import org.setwright.bench.told.Misread;

/** A piece of what was typed that knows its place. @param start offset of its first character */
public record Span(String text, int start) {

	/** @return offset after its last character */
	public int end() {
		return start + text.length();
	}

	/** @return it without blanks at both ends */
	public Span strip() {
		int lead = text.length() - text.stripLeading().length();
		return new Span(text.strip(), start + (text.isBlank() ? 0 : lead));
	}

	/** @return the part from {@code from} on, stripped */
	public Span from(int from) {
		return new Span(text.substring(from), start + from).strip();
	}

	/** @return the part up to {@code to}, stripped */
	public Span upTo(int to) {
		return new Span(text.substring(0, to), start).strip();
	}

	/** @return without quotation marks around all of it */
	public Span bare() {
		boolean quoted = text.length() > 1 && text.charAt(0) == '"' && text.charAt(text.length() - 1) == '"';
		return quoted ? new Span(text.substring(1, text.length() - 1), start + 1) : this;
	}

	/** @return whether there is nothing in it */
	public boolean isEmpty() {
		return text.isBlank();
	}

	/** @return whether it is {@code words}, any case */
	public boolean is(String words) {
		return normal().equals(words);
	}

	/** @return whether it begins with all of {@code words}, any case, and then ends or goes on with a new word */
	public boolean begins(String words) {
		return text.regionMatches(true, 0, words, 0, words.length())
				&& (text.length() == words.length() || !Character.isLetterOrDigit(text.charAt(words.length())) || words.endsWith(" "));
	}

	/** @return what follows {@code words}, which it begins with */
	public Span after(String words) {
		return from(words.length());
	}

	/** @return in small letters, with single blanks */
	public String normal() {
		return text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
	}

	/** @return a complaint about all of it */
	public Misread misread(String what, String remedy) {
		return new Misread(start, end(), what, remedy);
	}
}
