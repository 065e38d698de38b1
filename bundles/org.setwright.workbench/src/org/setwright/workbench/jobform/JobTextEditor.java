package org.setwright.workbench.jobform;

import org.eclipse.ui.editors.text.TextEditor;
import org.setwright.workbench.completing.OfferedWords;

/** The text of a job, with comments, names and values told apart. */
final class JobTextEditor extends TextEditor {
	@Override
	protected void initializeEditor() {
		super.initializeEditor();
		setSourceViewerConfiguration(new JobTextColours(getPreferenceStore()));
	}

	@Override
	protected void createActions() {
		super.createActions();
		setAction(OfferedWords.ACTION, OfferedWords.action(this));
	}
}
