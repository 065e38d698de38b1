package org.setwright.workbench.uses;

import java.util.Optional;
import java.util.Set;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ltk.ui.refactoring.RefactoringWizardOpenOperation;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.landing.need.Economy;
import org.setwright.writing.uses.Renaming;

/** Renames what stands under the cursor across the book. */
public final class RenameHandler extends AbstractHandler {
	/** The findings the landing plan looks for. */
	private static final Set<String> ASKED_BY_THE_PROGRAM = Set.of(Economy.FAN, Economy.HEAT_STEPS, Economy.COMPRESSOR_STEPS,
			Economy.AUXILIARY_STEPS, Economy.EMERGENCY);

	@Override
	public Object execute(ExecutionEvent event) {
		Optional<WordAtCursor> word = WordAtCursor.of(event);
		if (word.isEmpty()) {
			Sentence.say(event, Messages.UsesHandler_nothing);
			return null;
		}
		RenameEverywhere rename = new RenameEverywhere(of(word.get()));
		try {
			new RefactoringWizardOpenOperation(new RenameWizard(rename)).run(HandlerUtil.getActiveShell(event), rename.getName());
		} catch (InterruptedException cancelled) {
			return null;
		}
		return null;
	}

	/** @return the renaming of {@code word}, nothing done yet */
	static Renaming of(WordAtCursor word) {
		return new Renaming(word.manuscript(), word.thing(), ASKED_BY_THE_PROGRAM);
	}
}
