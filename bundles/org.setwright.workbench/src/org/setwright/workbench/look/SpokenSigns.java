package org.setwright.workbench.look;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Widget;

/** Names what nobody named, the platform's own windows included: a sign of a tool bar by its tip, a field by the words before it. */
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

	private static Optional<String> before(Text field) {
		List<Control> beside = List.of(field.getParent().getChildren());
		int at = beside.indexOf(field);
		return at > 0 && beside.get(at - 1) instanceof Label label && !label.getText().isBlank() ? Optional.of(label.getText()) : Optional.empty();
	}

	private static void name(Widget widget) {
		if (widget instanceof ToolBar bar) {
			for (ToolItem item : bar.getItems()) {
				name(item);
			}
		} else if (widget instanceof Text field && field.getData(Spoken.KEY) == null) {
			before(field).ifPresent(words -> NativeName.name(field, Spoken.plain(words)));
		} else if (widget instanceof ToolItem item && item.getText().isEmpty() && item.getToolTipText() != null
				&& !item.getToolTipText().equals(item.getData(KEY))) {
			item.setData(KEY, item.getToolTipText());
			NativeName.name(item, item.getToolTipText());
		}
	}
}
