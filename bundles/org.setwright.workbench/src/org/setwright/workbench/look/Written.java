package org.setwright.workbench.look;

import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.StyledString.Styler;
import org.eclipse.swt.graphics.TextStyle;

/** Styles for parts of a line. */
public final class Written {
	private Written() {
	}

	/** @return text in {@code ink} */
	public static Styler in(Palette.Ink ink) {
		return new Styler() {
			@Override
			public void applyStyles(TextStyle style) {
				style.foreground = Palette.now().colour(ink);
			}
		};
	}

	/** @return text on a ground that says it has changed */
	public static Styler changed() {
		return new Styler() {
			@Override
			public void applyStyles(TextStyle style) {
				style.foreground = Palette.now().colour(Palette.Ink.TEXT);
				style.background = Palette.now().colour(Palette.Ink.CHANGED_GROUND);
			}
		};
	}

	/** @return {@code text}, and {@code remark} after it, quieter */
	public static StyledString line(String text, String remark) {
		StyledString line = new StyledString(text);
		return remark.isEmpty() ? line : line.append("   " + remark, in(Palette.Ink.QUIET)); //$NON-NLS-1$
	}
}
