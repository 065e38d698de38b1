package org.setwright.workbench.look;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
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

	private static void set(Control control, FontDescriptor font) {
		control.setFont(new LocalResourceManager(JFaceResources.getResources(), control).create(font));
	}
}
