package org.setwright.command.opening;

import java.util.List;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;

/** What to type next. @param words as typed at the prompt @param does what it shows */
public record Hint(String words, String does) {

	/** @return the hint to type {@code arguments} about {@code book}, quoted for a shell */
	public static Hint of(Surroundings at, OpenBook book, String does, String... arguments) {
		StringBuilder words = new StringBuilder(quoted(at.name()));
		for (String argument : arguments) {
			words.append(' ').append(quoted(argument));
		}
		if (book.named()) {
			words.append(" --book ").append(quoted(book.book().folder().toString()));
		}
		return new Hint(words.toString(), does);
	}

	/** Lists the hints at the end of {@code page}. */
	public static void text(Page page, List<Hint> hints) {
		page.blank().line(0, Style.STRONG, "what to type next");
		for (Hint hint : hints) {
			page.verbatim(2, Style.PLAIN, hint.words());
			page.row(6, Cell.rest(Style.QUIET, hint.does()));
		}
	}

	private static String quoted(String argument) {
		return argument.matches("[\\w./:-]+") ? argument : '\'' + argument.replace("'", "'\\''") + '\'';
	}
}
