package org.setwright.workbench.editions;

import java.util.List;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.Matter;
import org.setwright.workbench.rows.Row;

/** What came of comparing two states of the book. @param rows ready to be shown */
record Compared(Sides sides, BookChanges changes, List<Row> rows) {

	/** @param matters what was remarked */
	static Compared of(EditionsOf editions, Sides sides, List<Matter> matters) throws NotDone {
		BookChanges changes = sides.changes(editions);
		return new Compared(sides, changes, ChangeRows.of(changes, matters));
	}
}
