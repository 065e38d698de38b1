package org.setwright.workbench.folder;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.book.JobEdit;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.JobField;

/** Opens places of the book in their editors. */
public final class Places {

	/** An editor of a job. */
	public interface JobPlaces {
		/** Shows {@code field} and puts the cursor there. */
		void show(JobField field);

		/** Makes {@code edits} as one step to undo; nothing is saved. @return why they could not be made, or empty */
		Optional<Problem> edit(List<JobEdit> edits);

		/** Shows the text of the job. @return the editor of the text */
		ITextEditor showText();
	}

	/** An editor that shows places in a way of its own, and not as text. */
	public interface LinePlaces {
		/** Shows what stands at {@code at} and puts the cursor there. */
		void show(Position at);
	}

	private Places() {
	}

	/** Opens the rule, row or other text at {@code at}. */
	public static void open(IWorkbenchPage page, Position at) {
		Optional<IEditorPart> editor = editor(page, at.file());
		editor.filter(LinePlaces.class::isInstance).ifPresent(e -> ((LinePlaces) e).show(at));
		editor.filter(e -> !(e instanceof LinePlaces)).flatMap(Places::text).ifPresent(e -> reveal(e, at));
	}

	/** Opens the file at {@code path}. @return the editor of its text; empty when it cannot be opened */
	public static Optional<ITextEditor> text(IWorkbenchPage page, String path) {
		return editor(page, path).flatMap(Places::text);
	}

	private static Optional<ITextEditor> text(IEditorPart editor) {
		return Optional.ofNullable(editor instanceof JobPlaces job ? job.showText() : editor.getAdapter(ITextEditor.class));
	}

	/** Opens the job, or other file, at {@code path}. */
	public static void openJob(IWorkbenchPage page, String path) {
		editor(page, path);
	}

	/** Opens the job at {@code path} where it answers {@code field}. */
	public static void openJob(IWorkbenchPage page, String path, JobField field) {
		editor(page, path).filter(JobPlaces.class::isInstance).ifPresent(e -> ((JobPlaces) e).show(field));
	}

	/** Makes {@code edits} in the job at {@code path}, in its editor. @return why they could not be made, or empty */
	public static Optional<Problem> editJob(IWorkbenchPage page, String path, List<JobEdit> edits) {
		return editor(page, path).filter(JobPlaces.class::isInstance).flatMap(e -> ((JobPlaces) e).edit(edits));
	}

	private static Optional<IEditorPart> editor(IWorkbenchPage page, String path) {
		Optional<IFile> file = BookProject.file(path);
		if (file.isEmpty()) {
			complain(NLS.bind(Messages.Places_gone, path), null);
			return Optional.empty();
		}
		try {
			return Optional.of(IDE.openEditor(page, file.get()));
		} catch (PartInitException e) {
			complain(NLS.bind(Messages.Places_cannotOpen, path), e);
			return Optional.empty();
		}
	}

	private static void complain(String sentence, Exception cause) {
		StatusManager.getManager().handle(new Status(IStatus.WARNING, Places.class, sentence, cause), StatusManager.SHOW);
	}

	private static void reveal(ITextEditor editor, Position at) {
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		if (at.line() > 0 && at.line() <= document.getNumberOfLines()) {
			try {
				editor.selectAndReveal(document.getLineOffset(at.line() - 1) + Math.max(at.column() - 1, 0), 0);
			} catch (BadLocationException changedMeanwhile) {
				editor.selectAndReveal(0, 0);
			}
		}
	}
}
