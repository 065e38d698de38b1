package org.setwright.bench;

import org.setwright.bench.keeping.Keeping;

/** Something a line asks of whoever shows the bench, who has the files. */
public sealed interface Wish {

	/** Keep something in the book, then go on over the book as it is afterwards. */
	record Keep(Keeping keeping) implements Wish {
	}

	/** Write a script. @param file as typed @param text of it */
	record Save(String file, String text) implements Wish {
	}

	/** Go through the lines of a script. @param file as typed */
	record Replay(String file) implements Wish {
	}

	/** Leave the bench. */
	record Leave() implements Wish {
	}
}
