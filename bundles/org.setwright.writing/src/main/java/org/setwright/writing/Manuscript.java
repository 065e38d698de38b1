package org.setwright.writing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.setwright.book.Book;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.writing.text.TextEdit;

/**
 * A book together with the texts of its files as they read now, typed or saved.
 *
 * @param book as read from these texts
 * @param texts gives the text of the file at a path below the book folder; empty when there is none
 */
public record Manuscript(Book book, Function<String, Optional<String>> texts) {

	/** @return the text of the file at {@code path}; "" when there is none */
	public String text(String path) {
		return texts.apply(path).orElse("");
	}

	/**
	 * @return the edits that make {@code changes} in the job at {@code path}
	 * @throws JobNotWritten when the job has errors, or a change cannot be made without losing something
	 */
	public List<TextEdit> inJob(String path, List<JobEdit> changes) throws JobNotWritten {
		String before = text(path);
		String after = new JobWriter(book.catalogue()).editAll(path, before, changes);
		return before.equals(after) ? List.of() : List.of(TextEdit.between(before, after));
	}
}
