package org.setwright.workbench.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.jface.bindings.keys.KeyStroke;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.look.Spoken;

/** Writes into a cell; what fits is offered while somebody writes, or on Ctrl+Space. */
final class WrittenCell extends TextCellEditor {
	private static final String BETWEEN = " or "; //$NON-NLS-1$
	private static final char[] OFFER_ON = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789".toCharArray(); //$NON-NLS-1$
	private final ContentProposalAdapter offering;
	private boolean begun;

	/** @param name what a screen reader calls it @param typed told of every change before it is taken */
	WrittenCell(Composite table, List<String> choices, String name, Consumer<String> typed) {
		super(table);
		text.addListener(SWT.Modify, e -> typed.accept(text.getText()));
		Spoken.as(text, name);
		offering = new ContentProposalAdapter(text, new TextContentAdapter(), (written, position) -> proposals(choices, written),
				KeyStroke.getInstance(SWT.CTRL, ' '), OFFER_ON);
		offering.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
	}

	/** @return the cells that come of writing on with a choice; none once the last part is one */
	static IContentProposal[] proposals(List<String> choices, String written) {
		int begun = written.lastIndexOf(BETWEEN) < 0 ? 0 : written.lastIndexOf(BETWEEN) + BETWEEN.length();
		String part = written.substring(begun).toLowerCase(Locale.ROOT);
		boolean done = choices.stream().anyMatch(c -> !c.isEmpty() && c.equalsIgnoreCase(part.strip()));
		return choices.stream().filter(c -> !done && !c.isEmpty() && c.toLowerCase(Locale.ROOT).contains(part.strip()))
				.sorted(Comparator.comparing(c -> !c.toLowerCase(Locale.ROOT).startsWith(part.strip())))
				.map(c -> new ContentProposal(written.substring(0, begun) + c, c, null)).toArray(IContentProposal[]::new);
	}

	@Override
	public void activate(ColumnViewerEditorActivationEvent event) {
		super.activate(event);
		if (event.sourceEvent instanceof KeyEvent key && !Character.isISOControl(key.character) && key.character != 0) {
			text.setText(String.valueOf(key.character));
			begun = true;
		}
	}

	/** Whoever begins by writing goes on behind the first letter, and does not write over it. */
	@Override
	protected void doSetFocus() {
		super.doSetFocus();
		if (begun) {
			text.setSelection(text.getText().length());
			begun = false;
		}
	}

	/** The list of what is offered takes the focus for a moment; that does not end the writing. */
	@Override
	protected void focusLost() {
		if (!offering.isProposalPopupOpen()) {
			super.focusLost();
		}
	}

	@Override
	protected boolean dependsOnExternalFocusListener() {
		return false;
	}
}
