package org.setwright.book;

/** An item of a list in which a job case names what it expects besides settings. */
public sealed interface ExpectedItem permits ExpectedCaution, ExpectedCheck, ExpectedFinding {
	/** Instead of a kind: whatever kind it is. */
	String ANY = "any";
	/** Instead of a kind: whatever the job does not expect. */
	String ANY_OTHER = "any other";

	/** @return where it stands in the file */
	Position at();

	/** @return the list it stands in */
	ItemList list();

	/** @return what stands before the colon, or alone */
	String head();

	/** @return what stands after the colon; empty when nothing does */
	String words();

	/** @return whether all is meant that the job does not expect */
	boolean other();

	/** @return the same item in {@code list}, which has the same topic */
	ExpectedItem in(ItemList list);

	/** @return for example {@code stop: line voltage at the wall} */
	default String text() {
		return head() + (words().isEmpty() ? "" : ": " + words());
	}

	/** @return whether {@code item} says the same, wherever it stands */
	default boolean same(ExpectedItem item) {
		return list() == item.list() && text().equals(item.text());
	}

	/** @return {@code text} on one line, with single blanks */
	static String onALine(String text) {
		return text.strip().replaceAll("\\s+", " ");
	}
}
