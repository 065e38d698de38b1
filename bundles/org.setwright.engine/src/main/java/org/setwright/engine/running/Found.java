package org.setwright.engine.running;

/** A finding in working memory. Public because the rule engine reads it. */
public final class Found {
	private final String name;
	private final boolean certain;

	Found(String name, boolean certain) {
		this.name = name;
		this.certain = certain;
	}

	/** @return the finding's word in rules */
	public String getName() {
		return name;
	}

	/** @return whether some rule certainly makes it; else some rule that would make it is held open */
	public boolean isCertain() {
		return certain;
	}
}
