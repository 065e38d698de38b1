package org.setwright.workbench.outline;

import java.util.Optional;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.Branches;
import org.setwright.workbench.uses.Pointed;
import org.setwright.workbench.uses.UseMenu;
import org.setwright.writing.uses.Thing;

/** Shows the rules of an editor and what each says; picking one shows it in the editor. */
final class RuleOutline extends ContentOutlinePage implements IDocumentListener, Pointed {
	private static final int PAUSE_MILLIS = 400;
	private final ITextEditor editor;
	private final IDocument document;
	private final Runnable refresh = this::refresh;

	RuleOutline(ITextEditor editor) {
		this.editor = editor;
		document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	@Override
	public void createControl(Composite parent) {
		super.createControl(parent);
		TreeViewer tree = getTreeViewer();
		Spoken.as(tree.getTree(), Messages.RuleOutline_name);
		tree.setContentProvider(new Branches<>(OutlineLine.class, OutlineLine::inside));
		tree.setLabelProvider(new LabelProvider() {
			@Override
			public String getText(Object line) {
				return ((OutlineLine) line).text();
			}

			@Override
			public Image getImage(Object line) {
				return ((OutlineLine) line).rule() ? Icon.RULE.image() : null;
			}
		});
		UseMenu.on(tree.getControl());
		refresh();
		document.addDocumentListener(this);
	}

	@Override
	public Optional<Thing> pointed() {
		return Optional.ofNullable((OutlineLine) getTreeViewer().getStructuredSelection().getFirstElement()).flatMap(line -> Pointed.at(document, line.word()));
	}

	private void refresh() {
		TreeViewer tree = getTreeViewer();
		if (tree != null && !tree.getControl().isDisposed()) {
			Object[] open = tree.getExpandedElements();
			tree.setInput(OutlineLine.of(document.get(), BookTexts.catalogue()));
			tree.setExpandedElements(open);
		}
	}

	@Override
	public void selectionChanged(SelectionChangedEvent event) {
		super.selectionChanged(event);
		if (event.getStructuredSelection().getFirstElement() instanceof OutlineLine line && getControl().isFocusControl()) {
			editor.selectAndReveal(Math.min(line.start(), document.getLength()), 0);
		}
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent event) {
		// only what it becomes is of interest
	}

	@Override
	public void documentChanged(DocumentEvent event) {
		if (getControl() != null && !getControl().isDisposed()) {
			getControl().getDisplay().asyncExec(() -> {
				if (getControl() != null && !getControl().isDisposed()) {
					getControl().getDisplay().timerExec(PAUSE_MILLIS, refresh);
				}
			});
		}
	}

	@Override
	public void dispose() {
		document.removeDocumentListener(this);
		super.dispose();
	}
}
