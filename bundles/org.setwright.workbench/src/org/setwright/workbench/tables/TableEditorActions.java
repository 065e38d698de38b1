package org.setwright.workbench.tables;

import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.MultiPageEditorActionBarContributor;
import org.eclipse.ui.texteditor.ITextEditor;

/** Has the menus act on the text of the table on both pages; copy, paste and delete on the grid act on its cells. */
public final class TableEditorActions extends MultiPageEditorActionBarContributor {
	private static final List<String> BOTH = List.of(ActionFactory.UNDO.getId(), ActionFactory.REDO.getId());
	private static final List<String> ON_TEXT = List.of(ActionFactory.CUT.getId(), ActionFactory.SELECT_ALL.getId(), ActionFactory.FIND.getId());
	private TableEditor editor;

	@Override
	public void setActiveEditor(IEditorPart part) {
		editor = part instanceof TableEditor table ? table : null;
		super.setActiveEditor(part);
	}

	@Override
	public void setActivePage(IEditorPart page) {
		IActionBars bars = getActionBars();
		ITextEditor text = editor == null ? null : editor.text();
		boolean grid = editor != null && page == null;
		BOTH.forEach(id -> bars.setGlobalActionHandler(id, text == null ? null : text.getAction(id)));
		ON_TEXT.forEach(id -> bars.setGlobalActionHandler(id, text == null || grid ? null : text.getAction(id)));
		both(bars, ActionFactory.COPY, grid ? action(editor.grid().clipboard()::copy) : null, text);
		both(bars, ActionFactory.PASTE, grid ? action(editor.grid().clipboard()::paste) : null, text);
		both(bars, ActionFactory.DELETE, grid ? action(editor.grid().clipboard()::delete) : null, text);
		bars.updateActionBars();
	}

	private static void both(IActionBars bars, ActionFactory which, IAction onGrid, ITextEditor text) {
		if (onGrid != null) {
			onGrid.setActionDefinitionId(which.getCommandId());
		}
		bars.setGlobalActionHandler(which.getId(), onGrid != null ? onGrid : text == null ? null : text.getAction(which.getId()));
	}

	private static IAction action(Runnable deed) {
		return new Action() {
			@Override
			public void run() {
				deed.run();
			}
		};
	}
}
