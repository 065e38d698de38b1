package org.setwright.workbench.uses;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.menus.IMenuService;

/** The menu of what can be pointed at: where it comes from, where it is used, another name. Its entries stand in plugin.xml. */
public final class UseMenu {
	private static final String PLACE = "popup:org.setwright.workbench.words"; //$NON-NLS-1$

	private UseMenu() {
	}

	/** Gives {@code control} the menu. @return it, for other controls of the same window */
	public static Menu on(Control control) {
		IMenuService menus = PlatformUI.getWorkbench().getService(IMenuService.class);
		MenuManager manager = new MenuManager();
		menus.populateContributionManager(manager, PLACE);
		Menu menu = manager.createContextMenu(control);
		control.setMenu(menu);
		control.addDisposeListener(e -> {
			menus.releaseContributions(manager);
			manager.dispose();
		});
		return menu;
	}
}
