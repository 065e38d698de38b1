package org.setwright.workbench.twopage;

import java.util.Map;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.editors.text.TextEditor;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.MultiPageEditorPart;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.uses.Pointed;

/**
 * Edits a file of the book in a way of its own, or as the text it is kept in. Both are one and the same: the text is what is
 * edited and saved, undo goes through both, and the other page follows the text whoever changes it.
 */
public abstract class TwoPageEditor extends MultiPageEditorPart {
	private static final int OWN = 0;
	private static final int TEXT = 1;
	private final TextEditor text;
	private final String title;
	private OwnPage page;

	/** @param text shows and saves the text @param title of the other page */
	protected TwoPageEditor(TextEditor text, String title) {
		this.text = text;
		this.title = title;
	}

	/** @return the page in {@code parent} that shows {@code document} in a way of its own; asked for once, never null */
	protected abstract OwnPage ownPage(Composite parent, IDocument document);

	/** @return whether the text is shown first; asked once, after {@link #ownPage} */
	protected boolean textFirst() {
		return false;
	}

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		setPartName(input.getName());
		setTitleToolTip(input.getToolTipText());
	}

	@Override
	protected final void createPages() {
		try {
			addPage(text, getEditorInput());
		} catch (PartInitException e) {
			throw new IllegalStateException("a text editor opens every file", e); //$NON-NLS-1$
		}
		page = ownPage(getContainer(), document());
		addPage(OWN, page.control());
		setPageText(OWN, title);
		setPageText(TEXT, Messages.TwoPageEditor_text);
		setActivePage(textFirst() ? TEXT : OWN);
		follow(document());
	}

	private void follow(IDocument document) {
		IDocumentListener listener = new IDocumentListener() {
			@Override
			public void documentAboutToBeChanged(DocumentEvent event) {
				// only what it becomes is of interest
			}

			@Override
			public void documentChanged(DocumentEvent event) {
				if (getActivePage() == OWN) {
					page.show();
				}
			}
		};
		document.addDocumentListener(listener);
		page.control().addDisposeListener(e -> document.removeDocumentListener(listener));
	}

	/** @return the editor of the text */
	ITextEditor text() {
		return text;
	}

	/** @return what the other page does itself */
	Map<ActionFactory, Runnable> deeds() {
		return page.deeds();
	}

	/** @return what is edited */
	protected final IDocument document() {
		return text.getDocumentProvider().getDocument(getEditorInput());
	}

	/** @return the path of the file below the book folder, with slashes */
	protected final String path() {
		return getEditorInput() instanceof IFileEditorInput file
				? BookProject.path(file.getFile().getFullPath()).orElse(getEditorInput().getName()) : getEditorInput().getName();
	}

	/** Turns to the page that is not the text. */
	protected final void showOwnPage() {
		setActivePage(OWN);
	}

	/** Turns to the text. @return its editor */
	public final ITextEditor showText() {
		setActivePage(TEXT);
		return text;
	}

	/** Goes to a problem or search result: in the text, unless the editor has a better place. */
	protected void goTo(IMarker marker) {
		showText().getAdapter(IGotoMarker.class).gotoMarker(marker);
	}

	@Override
	protected void pageChange(int now) {
		super.pageChange(now);
		if (now == OWN) {
			page.show();
		}
	}

	@Override
	public void setFocus() {
		if (getActivePage() == OWN) {
			page.setFocus();
		} else {
			super.setFocus();
		}
	}

	/** What is being typed on the other page belongs to what is saved. */
	@Override
	public void doSave(IProgressMonitor monitor) {
		page.control().getShell().forceFocus();
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
		} else if (wanted == Pointed.class) {
			return wanted.cast((Pointed) () -> getActivePage() == OWN ? page.pointed() : Pointed.in(text));
		} else if (wanted == IGotoMarker.class) {
			return wanted.cast((IGotoMarker) this::goTo);
		}
		return super.getAdapter(wanted);
	}
}
