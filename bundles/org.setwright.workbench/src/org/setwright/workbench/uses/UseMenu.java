package org.setwright.workbench.uses;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.part.IPageSite;

/** The menu of what can be pointed at: where it comes from, where it is used, another name. Its entries stand in plugin.xml. */
public final class UseMenu {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.words"; //$NON-NLS-1$

	private UseMenu() {
	}

	/** Gives {@code control} of the part at {@code site} the menu. @return it, for other controls of the same window */
	public static Menu on(Control control, IWorkbenchPartSite site, ISelectionProvider selection) {
		MenuManager manager = new MenuManager();
		site.registerContextMenu(ID, manager, selection);
		return shown(manager, control);
	}

	/** Gives {@code control} of the page at {@code site} the menu. */
	public static void on(Control control, IPageSite site, ISelectionProvider selection) {
		MenuManager manager = new MenuManager();
		site.registerContextMenu(ID, manager, selection);
		shown(manager, control);
	}

	private static Menu shown(MenuManager manager, Control control) {
		Menu menu = manager.createContextMenu(control);
		control.setMenu(menu);
		control.addDisposeListener(e -> manager.dispose());
		return menu;
	}
}
