package org.setwright.workbench.uses;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Uses;

/** Lists where what stands under the cursor is used: rules, tables and jobs. */
public final class UsesHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Optional<WordAtCursor> word = WordAtCursor.of(event);
		if (word.isEmpty()) {
			Sentence.say(event, Messages.UsesHandler_nothing);
			return null;
		}
		// practice before its jobs, of which there are many
		List<Mention> mentions = Uses.in(word.get().manuscript()).of(word.get().thing()).stream()
				.sorted(Comparator.comparing((Mention m) -> m.path().startsWith("jobs/"))).toList(); //$NON-NLS-1$
		String title = NLS.bind(Messages.UsesHandler_title, word.get().thing().called(), mentions.size());
		MentionList.show(HandlerUtil.getActiveWorkbenchWindow(event), title, word.get().manuscript(), mentions, false);
		return null;
	}
}
