package org.setwright.workbench.fixes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ltk.core.refactoring.Change;
import org.eclipse.ltk.core.refactoring.PerformChangeOperation;
import org.eclipse.ltk.core.refactoring.RefactoringCore;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.book.ShopSettingDraft;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;
import org.setwright.writing.Manuscript;
import org.setwright.writing.fix.Fix;
import org.setwright.writing.shop.NewSetting;
import org.setwright.writing.text.TextEdit;

/** Does what a fix says, as one step to undo; nothing is saved that was not before. Use it in the window's thread. */
public final class FixDone {
	private FixDone() {
	}

	/** Makes the edits of {@code fix}, which must be worked out from the texts as they read now, and shows where to go on writing. */
	public static void on(IWorkbenchPage page, String path, Fix fix) {
		if (fix.setting().isPresent()) {
			asked(page.getWorkbenchWindow().getShell(), fix.title(), fix.setting().get());
			Places.text(page, path).map(e -> (IEditorPart) e).ifPresent(page::activate);
			return;
		}
		boolean here = fix.edits().size() == 1 && fix.edits().containsKey(path);
		Optional<ITextEditor> editor = Places.text(page, path);
		try {
			if (here && editor.isPresent()) {
				type(document(editor.get()), fix.edits().get(path));
			} else {
				perform(fix.title(), fix.edits());
			}
		} catch (CoreException | BadLocationException refused) {
			refused(refused);
			return;
		}
		if (fix.cursor() >= 0) {
			editor.ifPresent(e -> e.selectAndReveal(fix.cursor(), 0));
		}
		editor.map(e -> (IEditorPart) e).ifPresent(page::activate);
	}

	private static void refused(Exception why) {
		StatusManager.getManager().handle(new Status(IStatus.WARNING, FixDone.class, Messages.FixDone_notDone, why), StatusManager.SHOW);
	}

	/** Asks for what is still to be known of a new setting, and adds it as one step to undo. @return whether it was added */
	static boolean asked(Shell shell, String title, ShopSettingDraft known) {
		Manuscript book = BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state()).orElseThrow();
		List<String> groups = book.book().catalogue().settings().stream().map(Setting::group).distinct().toList();
		Optional<Map<String, List<TextEdit>>> edits = new SettingDialog(shell, new NewSetting(book), groups, known).ask();
		try {
			if (edits.isPresent()) {
				perform(title, edits.get());
			}
			return edits.isPresent();
		} catch (CoreException refused) {
			refused(refused);
			return false;
		}
	}

	private static IDocument document(ITextEditor editor) {
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	/** Makes edits in a document, as one step to undo. */
	public static void type(IDocument document, List<TextEdit> edits) throws BadLocationException {
		IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(document);
		if (undo != null) {
			undo.beginCompoundChange();
		}
		try {
			edit(edits).apply(document);
		} finally {
			if (undo != null) {
				undo.endCompoundChange();
			}
		}
	}

	private static MultiTextEdit edit(List<TextEdit> edits) {
		MultiTextEdit all = new MultiTextEdit();
		edits.forEach(e -> all.addChild(new ReplaceEdit(e.start(), e.end() - e.start(), e.text())));
		return all;
	}

	private static void perform(String title, Map<String, List<TextEdit>> edits) throws CoreException {
		Change change = BookChange.of(title, edits);
		change.initializeValidationData(new NullProgressMonitor());
		PerformChangeOperation operation = new PerformChangeOperation(change);
		operation.setUndoManager(RefactoringCore.getUndoManager(), title);
		ResourcesPlugin.getWorkspace().run(operation, new NullProgressMonitor());
		if (!operation.changeExecuted()) {
			String why = operation.getValidationStatus() == null ? title : operation.getValidationStatus().toString();
			throw new CoreException(new Status(IStatus.WARNING, FixDone.class, why));
		}
	}
}
