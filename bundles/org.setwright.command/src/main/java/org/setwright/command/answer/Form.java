package org.setwright.command.answer;

import java.util.Locale;

/** The form an answer is printed in. */
enum Form {
	TEXT, JSON, CSV, SVG;

	@Override
	public String toString() {
		return name().toLowerCase(Locale.ROOT);
	}
}
