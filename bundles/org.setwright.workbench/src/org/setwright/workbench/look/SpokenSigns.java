package org.setwright.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Widget;

/** Has every sign of a tool bar that shows no words called by its tip, the platform's own signs included. */
public final class SpokenSigns {
	/** Under this key a sign knows its name. */
	static final String KEY = SpokenSigns.class.getName();

	private SpokenSigns() {
	}

	/** From now on, until {@code display} is disposed. */
	public static void on(Display display) {
		// sent for every new widget, once its maker has done with it
		display.addListener(SWT.Skin, e -> name(e.widget));
		// tips come later or change: whoever can walk to a bar or rest on it finds it named
		display.addFilter(SWT.FocusIn, e -> name(e.widget));
		display.addFilter(SWT.Paint, e -> name(e.widget));
	}

	private static void name(Widget widget) {
		if (widget instanceof ToolBar bar) {
			for (ToolItem item : bar.getItems()) {
				name(item);
			}
		} else if (widget instanceof ToolItem item && item.getText().isEmpty() && item.getToolTipText() != null
				&& !item.getToolTipText().equals(item.getData(KEY))) {
			item.setData(KEY, item.getToolTipText());
			NativeName.name(item, item.getToolTipText());
		}
	}
}
