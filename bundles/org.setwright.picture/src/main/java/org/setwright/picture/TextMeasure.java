package org.setwright.picture;

/** How much room a line of text takes. */
@FunctionalInterface
public interface TextMeasure {
	/** Roughly the widths of a usual sans-serif type of 13 pixels, a little generous; for pictures that are drawn elsewhere. */
	TextMeasure USUAL = (line, strong) -> line.chars().mapToDouble(c -> width((char) c)).sum() * (strong ? 1.08 : 1);

	/** @param strong whether it is set bold @return its width in pixels */
	double width(String line, boolean strong);

	/** @return from one line of text to the next, in pixels */
	default double lineHeight() {
		return Picture.LINE_HEIGHT;
	}

	private static double width(char letter) {
		return "iljtfr.,:;'|!()[] ".indexOf(letter) >= 0 ? 4.8 : "mwMW@%".indexOf(letter) >= 0 ? 11.6 : Character.isUpperCase(letter) ? 9 : 7.5;
	}
}
