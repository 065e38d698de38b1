package org.setwright.editions.compare;

/** In what a rule can differ from what it was. */
public enum Aspect {
	/** When it speaks. */
	CONDITION("condition"),
	/** What it says then. */
	OUTCOME("outcome"),
	/** The weight it carries. */
	AUTHORITY("authority"),
	/** Its reason, source, comments or layout: nothing that any job could come to. */
	WORDING("wording"),
	/** What it is called. */
	NAME("name"),
	/** The file it stands in. */
	PLACE("place");

	private final String words;

	Aspect(String words) {
		this.words = words;
	}

	/** @return for people */
	public String words() {
		return words;
	}

	/** @return whether a job can come to something else by it */
	public boolean matters() {
		return this == CONDITION || this == OUTCOME || this == AUTHORITY;
	}
}
