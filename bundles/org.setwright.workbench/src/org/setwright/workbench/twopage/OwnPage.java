package org.setwright.workbench.twopage;

import java.util.Map;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.actions.ActionFactory;
import org.setwright.workbench.uses.Pointed;

/** The page that shows a text in a way of its own. */
public interface OwnPage extends Pointed {
	/** @return what holds the page; never null */
	Control control();

	/** Shows what the text says now. */
	void show();

	/** Puts the cursor into the page. */
	void setFocus();

	/** @return what the page does itself for entries of the menus other than undo and redo; its fields do the rest */
	default Map<ActionFactory, Runnable> deeds() {
		return Map.of();
	}
}
