package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.editors.text.TextEditor;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.MultiPageEditorPart;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.book.JobEdit;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;

/** Edits a job: as a form, or as the text it is kept in. Both are one and the same; undo goes through both. */
public final class JobEditor extends MultiPageEditorPart implements Places.JobPlaces {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.jobEditor"; //$NON-NLS-1$
	private static final int FORM = 0;
	private static final int TEXT = 1;
	private final TextEditor text = new JobTextEditor();
	private JobDocument job;
	private JobForm form;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		setPartName(input.getName());
		setTitleToolTip(input.getToolTipText());
	}

	@Override
	protected void createPages() {
		try {
			addPage(text, getEditorInput());
		} catch (PartInitException e) {
			throw new IllegalStateException("a text editor opens every file", e); //$NON-NLS-1$
		}
		IDocument document = text.getDocumentProvider().getDocument(getEditorInput());
		job = new JobDocument(path(), document, BookTexts::catalogue);
		form = new JobForm(getContainer(), job, this::setPartName);
		addPage(FORM, form.control());
		setPageText(FORM, Messages.JobEditor_form);
		setPageText(TEXT, Messages.JobEditor_text);
		setActivePage(FORM);
		follow(document);
	}

	/** @return the page that shows the text */
	ITextEditor text() {
		return text;
	}

	private String path() {
		return getEditorInput() instanceof IFileEditorInput file
				? BookProject.path(file.getFile().getFullPath()).orElse(getEditorInput().getName())
				: getEditorInput().getName();
	}

	private void follow(IDocument document) {
		IDocumentListener listener = new IDocumentListener() {
			@Override
			public void documentAboutToBeChanged(DocumentEvent event) {
				// only what it becomes is of interest
			}

			@Override
			public void documentChanged(DocumentEvent event) {
				if (getActivePage() == FORM) {
					form.show();
				}
			}
		};
		document.addDocumentListener(listener);
		form.control().addDisposeListener(e -> document.removeDocumentListener(listener));
	}

	@Override
	protected void pageChange(int page) {
		super.pageChange(page);
		if (page == FORM) {
			form.show();
		}
	}

	@Override
	public void setFocus() {
		getSite().getService(Desk.class).pickJob(path());
		if (getActivePage() == FORM) {
			form.setFocus();
		} else {
			super.setFocus();
		}
	}

	@Override
	public void show(JobField field) {
		setActivePage(FORM);
		form.show(field);
	}

	@Override
	public Optional<Problem> edit(List<JobEdit> edits) {
		return job.edit(edits);
	}

	@Override
	public ITextEditor showText() {
		setActivePage(TEXT);
		return text;
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		form.control().getShell().forceFocus();
		text.doSave(monitor);
	}

	@Override
	public void doSaveAs() {
		text.doSaveAs();
	}

	@Override
	public boolean isSaveAsAllowed() {
		return false;
	}

	@Override
	public <T> T getAdapter(Class<T> wanted) {
		if (wanted == ITextEditor.class) {
			return wanted.cast(text);
		} else if (wanted == IGotoMarker.class) {
			return wanted.cast((IGotoMarker) marker -> {
				showText().getAdapter(IGotoMarker.class).gotoMarker(marker);
			});
		}
		return super.getAdapter(wanted);
	}
}
