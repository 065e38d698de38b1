package org.setwright.workbench.completing;

import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.completing.SettingsCompletion;

/** Completion in the settings of the shop's own. */
public final class SettingsWords extends OfferedWords {

	/** Made by the editor. */
	public SettingsWords() {
		super((text, offset) -> new SettingsCompletion(BookTexts.catalogue()).at(text, offset));
	}
}
