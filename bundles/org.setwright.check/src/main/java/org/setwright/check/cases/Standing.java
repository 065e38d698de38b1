package org.setwright.check.cases;

/** How a point of a job case stands. */
public enum Standing {
	/** It came to what is expected. */
	MET("met"),
	/** It came to something else. */
	NOT_MET("not met"),
	/** Nothing is expected of it. */
	NOT_ASKED("not asked");

	private final String word;

	Standing(String word) {
		this.word = word;
	}

	/** @return for people and files */
	public String word() {
		return word;
	}
}
