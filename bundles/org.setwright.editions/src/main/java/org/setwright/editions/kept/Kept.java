package org.setwright.editions.kept;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * One edition: a state of the book that somebody kept. Immutable.
 *
 * @param parents the editions it came from: none for the first, two or more where lines were joined
 * @param by who wrote it
 * @param on when, with the offset from UTC of its author's clock
 * @param message the whole message
 * @param content names what the book's files hold: the same for editions that hold the same
 */
public record Kept(EditionId id, List<EditionId> parents, Who by, OffsetDateTime on, String message, String content) {
	public Kept {
		parents = List.copyOf(parents);
	}

	/** @return the first line of the message */
	public String title() {
		return message.lines().findFirst().orElse("").strip();
	}

	/** @return the rest of the message: why; may be empty */
	public String reason() {
		String text = message.strip();
		int line = text.indexOf('\n');
		return line < 0 ? "" : text.substring(line + 1).strip();
	}

	/** @return for example {@code 3f2a9c01de of 2026-04-02, by Trine Aasen} */
	public String shown() {
		return id.shown() + " of " + on.toLocalDate() + ", by " + by.name();
	}
}
