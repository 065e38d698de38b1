package org.setwright.workbench.look;

import java.util.Arrays;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/** The colours of texts, chosen to be read easily on a light or on a dark ground. */
public enum Palette {
	LIGHT(0x23282e, 0x5c6670, 0x1f4e6b, 0xfff3d1, 0xeef3f6, 0x7b3fa0, 0x20744a, 0x727a83, 0x955700, 0x1a5da6, 0x0b6b68, 0x44546a, 0x1f4e6b, 0x8a4b08),
	DARK(0xe4e7ea, 0xa9b2bc, 0xa5d3e8, 0x4d4120, 0x343a40, 0xcb9df0, 0x9ad69a, 0x909aa5, 0xe7ba72, 0x8abcf5, 0x74d2c8, 0xb9c6d6, 0xa5d3e8, 0xf0c48a);

	/** Texts by what they mean. */
	public enum Ink {
		TEXT, QUIET, HEADING, CHANGED_GROUND, BAND_GROUND, KEYWORD, STRING, COMMENT, ANNOTATION, CONSTANT, FACT, FIELD, SETTING, AUTHORITY
	}

	private static final int DARKER_THAN = 128;
	private final Color[] colours;

	Palette(int... rgb) {
		colours = Arrays.stream(rgb)
				.mapToObj(c -> new Color(new RGB(c >> 16 & 0xff, c >> 8 & 0xff, c & 0xff))).toArray(Color[]::new);
	}

	/** @return the palette that fits the ground lists and editors have now; call in the window's thread */
	public static Palette now() {
		RGB ground = Display.getCurrent().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
		return (ground.red * 3 + ground.green * 6 + ground.blue) / 10 < DARKER_THAN ? DARK : LIGHT;
	}

	/** @return the colour of {@code ink}; never to be disposed */
	public Color colour(Ink ink) {
		return colours[ink.ordinal()];
	}
}
