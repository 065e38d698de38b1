package org.setwright.book;

import java.util.List;

/** What could be written to mend a problem, exactly enough to be done with a key. */
public sealed interface Mend {

	/**
	 * Something else in place of what is written.
	 *
	 * @param written what stands in the file at the problem's place or behind it on that line, quotation marks included
	 * @param instead what could stand there, the likeliest first; not empty
	 */
	record Replace(String written, List<String> instead) implements Mend {
		public Replace {
			instead = List.copyOf(instead);
		}
	}

	/** Something that is missing. @param text to be written behind what stands before the problem's place */
	record Insert(String text) implements Mend {
	}
}
