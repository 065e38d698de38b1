package org.setwright.workbench.uses;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.handlers.HandlerUtil;

/** Says in a sentence why a command has nothing to show. */
final class Sentence {
	private Sentence() {
	}

	static void say(ExecutionEvent event, String sentence) {
		MessageDialog.openInformation(HandlerUtil.getActiveShell(event), Messages.Sentence_title, sentence);
	}
}
