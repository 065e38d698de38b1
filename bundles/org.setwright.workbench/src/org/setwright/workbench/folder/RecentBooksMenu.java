package org.setwright.workbench.folder;

import java.nio.file.Path;
import java.util.Map;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/** The menu of rule books opened lately. */
public final class RecentBooksMenu extends CompoundContributionItem {

	@Override
	protected IContributionItem[] getContributionItems() {
		return new RecentBooks().list().stream().map(RecentBooksMenu::item).toArray(IContributionItem[]::new);
	}

	private static IContributionItem item(Path folder) {
		CommandContributionItemParameter item = new CommandContributionItemParameter(PlatformUI.getWorkbench(), null,
				OpenBookHandler.COMMAND, CommandContributionItem.STYLE_PUSH);
		item.label = folder.toString().replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$
		item.parameters = Map.of(OpenBookHandler.FOLDER, folder.toString());
		return new CommandContributionItem(item);
	}
}
