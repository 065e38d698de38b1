package org.setwright.workbench.look;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;

/** Sets type: everything grows from the font the person has chosen for dialogs. */
public final class Type {
	private Type() {
	}

	/** Sets {@code control} bold and {@code points} larger than the dialog font, until it is disposed. */
	public static void heading(Control control, int points) {
		set(control, FontDescriptor.createFrom(JFaceResources.getDialogFont()).setStyle(SWT.BOLD).increaseHeight(points));
	}

	/** Sets {@code control} {@code points} larger than the dialog font, until it is disposed. */
	public static void larger(Control control, int points) {
		set(control, FontDescriptor.createFrom(JFaceResources.getDialogFont()).increaseHeight(points));
	}

	/** Has {@code control} written in {@code ink}, in light and in dark, until it is disposed. */
	public static void ink(Control control, Palette.Ink ink) {
		Runnable paint = () -> control.setForeground(Palette.now().colour(ink));
		Repaint.with(control, paint);
		paint.run();
	}

	/** @return the pixels that so many letters beside and lines below each other take in the dialog font as it is set on {@code control} */
	public static Point room(Control control, int letters, int lines) {
		GC gc = new GC(control);
		try {
			gc.setFont(JFaceResources.getDialogFont());
			return new Point((int) Math.ceil(letters * gc.getFontMetrics().getAverageCharacterWidth()), lines * gc.getFontMetrics().getHeight());
		} finally {
			gc.dispose();
		}
	}

	private static void set(Control control, FontDescriptor font) {
		control.setFont(new LocalResourceManager(JFaceResources.getResources(), control).create(font));
	}
}
