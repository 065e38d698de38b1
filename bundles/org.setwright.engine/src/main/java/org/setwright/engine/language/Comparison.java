package org.setwright.engine.language;

/** How two values are compared. */
public enum Comparison {
	EQUAL("==", "is"), NOT_EQUAL("!=", "is not"), LESS("<", "is below"), AT_MOST("<=", "is at most"),
	MORE(">", "is above"), AT_LEAST(">=", "is at least");

	private final String sign;
	private final String words;

	Comparison(String sign, String words) {
		this.sign = sign;
		this.words = words;
	}

	/** @return as written in rules */
	public String sign() {
		return sign;
	}

	/** @return as read aloud */
	public String words() {
		return words;
	}

	/** @return whether {@code left} compares so with {@code right}, both {@code Value.plain()} of one domain */
	@SuppressWarnings({ "unchecked", "rawtypes" })
	public boolean holds(Object left, Object right) {
		return switch (this) {
			case EQUAL -> left.equals(right);
			case NOT_EQUAL -> !left.equals(right);
			case LESS -> ((Comparable) left).compareTo(right) < 0;
			case AT_MOST -> ((Comparable) left).compareTo(right) <= 0;
			case MORE -> ((Comparable) left).compareTo(right) > 0;
			case AT_LEAST -> ((Comparable) left).compareTo(right) >= 0;
		};
	}
}
