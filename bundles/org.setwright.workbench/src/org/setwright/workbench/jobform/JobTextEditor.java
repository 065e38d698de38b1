package org.setwright.workbench.jobform;

import org.eclipse.ui.editors.text.TextEditor;

/** The text of a job, with comments, names and values told apart. */
final class JobTextEditor extends TextEditor {
	@Override
	protected void initializeEditor() {
		super.initializeEditor();
		setSourceViewerConfiguration(new JobTextColours(getPreferenceStore()));
	}
}
