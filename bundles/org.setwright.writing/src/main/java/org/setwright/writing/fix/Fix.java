package org.setwright.writing.fix;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.ShopSettingDraft;
import org.setwright.writing.text.TextEdit;

/**
 * Something that can be done to the files of a book with a key.
 *
 * @param title what it does, as a command: "Write OutdoorUnit"
 * @param detail what to know before doing it, in whole sentences; may be empty
 * @param edits by path below the book folder; the offsets are those of the texts it was worked out from
 * @param setting what is known of a new setting that somebody has to describe before anything can be written; empty for all other fixes
 * @param cursor where in the first file somebody has to go on writing afterwards, as an offset; -1 when nothing is left to write
 */
public record Fix(String title, String detail, Map<String, List<TextEdit>> edits, Optional<ShopSettingDraft> setting, int cursor) {
	public Fix {
		edits = Map.copyOf(edits);
	}

	/** @return a fix that makes edits */
	static Fix in(String title, String detail, Map<String, List<TextEdit>> edits, int cursor) {
		return new Fix(title, detail, edits, Optional.empty(), cursor);
	}

	/** @return a fix that asks somebody to describe {@code setting} first */
	static Fix asking(String title, String detail, ShopSettingDraft setting) {
		return new Fix(title, detail, Map.of(), Optional.of(setting), -1);
	}

	/** @return a fix in one file */
	static Fix in(String path, String title, String detail, List<TextEdit> edits, int cursor) {
		return in(title, detail, Map.of(path, List.copyOf(edits)), cursor);
	}
}
