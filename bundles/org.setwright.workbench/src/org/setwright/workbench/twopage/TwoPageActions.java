package org.setwright.workbench.twopage;

import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.MultiPageEditorActionBarContributor;

/** Has the menus act on the text of the file: undo and redo on both pages, the rest on the page of the text or as the other page does it. */
public final class TwoPageActions extends MultiPageEditorActionBarContributor {
	private static final List<ActionFactory> ON_BOTH = List.of(ActionFactory.UNDO, ActionFactory.REDO);
	private static final List<ActionFactory> ON_ONE = List.of(ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE, ActionFactory.DELETE,
			ActionFactory.SELECT_ALL, ActionFactory.FIND);
	private TwoPageEditor editor;

	@Override
	public void setActiveEditor(IEditorPart part) {
		editor = part instanceof TwoPageEditor two ? two : null;
		super.setActiveEditor(part);
	}

	/** @param page the editor of the text; null for the other page */
	@Override
	public void setActivePage(IEditorPart page) {
		boolean own = editor != null && page == null;
		ON_BOTH.forEach(which -> handle(which, onText(which)));
		ON_ONE.forEach(which -> handle(which, own ? onOwnPage(which) : onText(which)));
		getActionBars().updateActionBars();
	}

	private void handle(ActionFactory which, IAction action) {
		getActionBars().setGlobalActionHandler(which.getId(), action);
	}

	private IAction onText(ActionFactory which) {
		return editor == null ? null : editor.text().getAction(which.getId());
	}

	private IAction onOwnPage(ActionFactory which) {
		Runnable deed = editor.deeds().get(which);
		if (deed == null) {
			return null;
		}
		IAction action = new Action() {
			@Override
			public void run() {
				deed.run();
			}
		};
		action.setActionDefinitionId(which.getCommandId());
		return action;
	}
}
