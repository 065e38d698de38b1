package org.setwright.workbench.counts;

import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.workbench.desk.Desk;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;

/** Shows the jobs of the rule under the cursor. */
public final class JobsOfRuleHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		Optional<String> rule = atCursor(HandlerUtil.getActiveEditor(event)).or(() -> window.getService(Desk.class).state().rule());
		if (rule.flatMap(name -> JobsOfRule.show(window, name)).isEmpty()) {
			StatusManager.getManager().handle(new Status(IStatus.INFO, JobsOfRuleHandler.class, Messages.JobsOfRule_noRule), StatusManager.SHOW);
		}
		return null;
	}

	private static Optional<String> atCursor(IEditorPart part) {
		if (part instanceof ITextEditor editor && editor.getSelectionProvider().getSelection() instanceof ITextSelection cursor) {
			IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
			return RuleText.of(document.get()).blockAt(cursor.getOffset()).map(RuleBlock::called);
		}
		return Optional.empty();
	}
}
