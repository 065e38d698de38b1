package org.setwright.book;

/** Whether a book demands that somebody signs an edition before it goes out. */
public enum SignOff {
	/** An edition may go out unsigned. */
	NOT_DEMANDED("not demanded"),
	/** Somebody has to sign. */
	DEMANDED("demanded"),
	/** Somebody has to sign who wrote none of what is new since the last signed edition. */
	FROM_A_SECOND_PERSON("demanded from a second person");

	private final String words;

	SignOff(String words) {
		this.words = words;
	}

	/** @return what stands for it in {@code book.yaml} */
	public String words() {
		return words;
	}
}
