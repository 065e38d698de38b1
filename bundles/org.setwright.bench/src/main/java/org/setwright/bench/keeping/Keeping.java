package org.setwright.bench.keeping;

import java.util.Optional;

/**
 * Something to be kept in a file of the book. Whoever has the file in hand carries it out: reads the file as it is now, with
 * what is typed in it and not saved, takes {@link Edit#of}, and writes all of it or nothing.
 *
 * @param path of the file, below the book folder
 * @param edit what becomes of the file
 * @param done what to tell when it is done, one sentence
 */
public record Keeping(String path, Edit edit, String done) {

	/** What becomes of a file. */
	@FunctionalInterface
	public interface Edit {
		/**
		 * @param now the text of the file; empty when there is none
		 * @return its text afterwards
		 * @throws NotKept when it would lose something or be wrong; the file is to stay as it is
		 */
		String of(Optional<String> now) throws NotKept;
	}
}
