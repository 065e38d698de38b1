package org.setwright.command.terminal;

/** How a piece of text stands out. Colour only underlines what the words already say. */
public enum Style {
	PLAIN(""), STRONG("1"), QUIET("2"), GOOD("32"), ATTENTION("33"), ALARM("1;31");

	private final String code;

	Style(String code) {
		this.code = code;
	}

	/** @return {@code text} between the control sequences of this style */
	String paint(String text) {
		return this == PLAIN || text.isBlank() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
	}
}
