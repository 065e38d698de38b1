package org.setwright.bench.told;

/** What was typed cannot be followed; nothing has changed. */
public final class Misread extends Exception {
	private static final long serialVersionUID = 1L;
	private final int start;
	private final int end;
	private final String remedy;

	/**
	 * @param start offset in what was typed, from 0
	 * @param end offset after the last character meant; not before {@code start}
	 * @param what what is wrong, one sentence
	 * @param remedy what to type, one sentence
	 */
	public Misread(int start, int end, String what, String remedy) {
		super(what, null, false, false);
		this.start = Math.max(0, start);
		this.end = Math.max(this.start, end);
		this.remedy = remedy;
	}

	/** @return offset of the first character meant, from 0 */
	public int start() {
		return start;
	}

	/** @return offset after the last character meant */
	public int end() {
		return end;
	}

	/** @return what is wrong, one sentence */
	public String what() {
		return getMessage();
	}

	/** @return what to type, one sentence */
	public String remedy() {
		return remedy;
	}

	/** @param typed all that was typed @return the line, from 1, in which it stands */
	public int line(String typed) {
		return (int) typed.substring(0, Math.min(start, typed.length())).chars().filter(c -> c == '\n').count() + 1;
	}

	/** @param typed all that was typed @return the column, from 1, counting Java characters */
	public int column(String typed) {
		int at = Math.min(start, typed.length());
		return at - typed.lastIndexOf('\n', at - 1);
	}
}
