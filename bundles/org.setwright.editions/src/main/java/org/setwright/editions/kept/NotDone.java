package org.setwright.editions.kept;

/** Something was not done, and nothing was lost. Says in plain words why, and what to do. */
public final class NotDone extends Exception {
	private static final long serialVersionUID = 1;
	private final String what;
	private final String remedy;

	/** @param what why not, one sentence @param remedy what to do, one sentence @param cause for the log; may be null */
	public NotDone(String what, String remedy, Throwable cause) {
		super(what + " " + remedy, cause);
		this.what = what;
		this.remedy = remedy;
	}

	/** Without a cause of its own. */
	public NotDone(String what, String remedy) {
		this(what, remedy, null);
	}

	/** @return why not, one sentence */
	public String what() {
		return what;
	}

	/** @return what to do, one sentence */
	public String remedy() {
		return remedy;
	}
}
