package org.setwright.bench.keeping;

/** A file is left as it is; the message is for the person, and says what to do. */
public final class NotKept extends Exception {
	private static final long serialVersionUID = 1L;

	/** @param sentences what is in the way, and what to do */
	public NotKept(String sentences) {
		super(sentences, null, false, false);
	}
}
