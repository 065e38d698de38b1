package org.setwright.workbench.editions;

import java.util.List;
import org.setwright.editions.kept.Who;

/**
 * What a person is asked to write.
 *
 * @param title of the dialog
 * @param help one sentence
 * @param button what is done then
 * @param shown what there is to look at before; empty for nothing
 * @param choices what it may be about; empty when there is nothing to choose
 * @param label what is written
 * @param words what stands there at first
 * @param demanded whether something has to be written
 * @param author who writes
 */
record Entry(String title, String help, String button, String shown, List<String> choices, String label, String words, boolean demanded,
		Author author) {
	Entry {
		choices = List.copyOf(choices);
	}

	/** What was written. @param choice its number among the choices, from 0 */
	record Said(int choice, String words, Who by) {
	}
}
