package org.setwright.workbench.bench;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.source.SourceViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.VerifyEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.setwright.bench.Session;
import org.setwright.bench.hand.AtHand;
import org.setwright.workbench.look.Spoken;

/**
 * Where lines are typed. Enter follows the line, unless a rule has no end yet; Shift+Enter always begins another line. Up and
 * down on the first and last line call earlier lines back.
 */
final class LineInput {
	private static final int MOST_LINES = 12;
	private static final int EDGES = 12;
	private final SourceViewer viewer;
	private final Remembered remembered;
	private final Consumer<String> said;

	/** @param hand what lies on the bench, to complete by @param said told each line that is to be followed */
	LineInput(Composite parent, Remembered remembered, Supplier<Optional<AtHand>> hand, Consumer<String> said) {
		this.remembered = remembered;
		this.said = said;
		viewer = new SourceViewer(parent, null, SWT.MULTI | SWT.BORDER | SWT.WRAP);
		viewer.configure(new LineCompletion(hand));
		viewer.setDocument(new Document());
		StyledText text = viewer.getTextWidget();
		text.setFont(JFaceResources.getTextFont());
		text.setMargins(8, 4, 8, 4);
		Spoken.as(text, Messages.LineInput_name);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(viewer.getControl());
		fit();
		text.addListener(SWT.Modify, e -> fit());
		viewer.prependVerifyKeyListener(this::key);
		text.addListener(SWT.Traverse, e -> e.doit |= e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
	}

	/** As high as what stands there, up to a limit. */
	private void fit() {
		int lines = Math.min(MOST_LINES, control().getLineCount());
		GridData layout = (GridData) viewer.getControl().getLayoutData();
		int height = lines * control().getLineHeight() + EDGES;
		if (layout.heightHint != height) {
			layout.heightHint = height;
			viewer.getControl().getParent().layout();
		}
	}

	StyledText control() {
		return viewer.getTextWidget();
	}

	/** @return what stands there */
	String text() {
		return viewer.getDocument().get();
	}

	/** Puts {@code line} there, ready to be gone on with. */
	void put(String line) {
		viewer.getDocument().set(line);
		control().setCaretOffset(line.length());
		control().showSelection();
		control().setFocus();
	}

	/** Shows what could be typed next. */
	void complete() {
		operate(SourceViewer.CONTENTASSIST_PROPOSALS);
	}

	/** Does {@code operation} of a text, such as undoing what was typed. */
	void operate(int operation) {
		ITextOperationTarget target = viewer.getTextOperationTarget();
		if (target.canDoOperation(operation)) {
			target.doOperation(operation);
		}
	}

	private void key(VerifyEvent event) {
		boolean enter = event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR;
		if (!event.doit) {
			return;
		} else if (enter && event.stateMask == 0 && !Session.unfinished(text())) {
			event.doit = false;
			follow();
		} else if (event.keyCode == SWT.ARROW_UP && event.stateMask == 0 && line() == 0) {
			event.doit = remembered.earlier(text()).map(this::call).isEmpty();
		} else if (event.keyCode == SWT.ARROW_DOWN && event.stateMask == 0 && line() == control().getLineCount() - 1) {
			event.doit = remembered.later().map(this::call).isEmpty();
		} else if (event.character == SWT.TAB && event.stateMask == 0) {
			event.doit = false;
			control().traverse(SWT.TRAVERSE_TAB_NEXT);
		}
	}

	private String call(String line) {
		put(line);
		return line;
	}

	private int line() {
		return control().getLineAtOffset(control().getCaretOffset());
	}

	/** Follows what stands there. */
	void follow() {
		String line = text().strip();
		if (!line.isEmpty()) {
			remembered.add(line);
			IDocument document = viewer.getDocument();
			document.set(""); //$NON-NLS-1$
			said.accept(line);
		}
	}
}
