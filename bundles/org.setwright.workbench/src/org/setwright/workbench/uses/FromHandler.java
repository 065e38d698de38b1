package org.setwright.workbench.uses;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Uses;

/** Leads from what is pointed at to where it comes from: the rules and tables that make a finding or propose a setting. */
public final class FromHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Optional<WordAtCursor> word = WordAtCursor.of(event);
		if (word.isEmpty()) {
			Sentence.say(event, Messages.UsesHandler_nothing);
			return null;
		}
		List<Mention> from = Uses.in(word.get().manuscript()).definitions(word.get().thing());
		String called = word.get().thing().called();
		if (from.isEmpty()) {
			Sentence.say(event, NLS.bind(Messages.FromHandler_nowhere, called));
		} else {
			MentionList.show(HandlerUtil.getActiveWorkbenchWindow(event), NLS.bind(Messages.MentionLinks_from, called), word.get().manuscript(), from, true);
		}
		return null;
	}
}
