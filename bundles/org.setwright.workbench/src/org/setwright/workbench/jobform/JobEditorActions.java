package org.setwright.workbench.jobform;

import java.util.List;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.MultiPageEditorActionBarContributor;
import org.eclipse.ui.texteditor.ITextEditor;

/** Has the menus act on the text of the job on both pages; on the form only undo and redo, the fields do the rest. */
public final class JobEditorActions extends MultiPageEditorActionBarContributor {
	private static final List<String> BOTH = List.of(ActionFactory.UNDO.getId(), ActionFactory.REDO.getId());
	private static final List<String> ON_TEXT = List.of(ActionFactory.CUT.getId(), ActionFactory.COPY.getId(),
			ActionFactory.PASTE.getId(), ActionFactory.DELETE.getId(), ActionFactory.SELECT_ALL.getId(), ActionFactory.FIND.getId());
	private JobEditor editor;

	@Override
	public void setActiveEditor(IEditorPart part) {
		editor = part instanceof JobEditor job ? job : null;
		super.setActiveEditor(part);
	}

	@Override
	public void setActivePage(IEditorPart page) {
		IActionBars bars = getActionBars();
		ITextEditor text = editor == null ? null : editor.text();
		BOTH.forEach(id -> bars.setGlobalActionHandler(id, text == null ? null : text.getAction(id)));
		ON_TEXT.forEach(id -> bars.setGlobalActionHandler(id, text == null || page == null ? null : text.getAction(id)));
		bars.updateActionBars();
	}
}
