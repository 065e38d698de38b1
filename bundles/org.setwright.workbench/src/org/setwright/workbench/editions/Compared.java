package org.setwright.workbench.editions;

import java.util.List;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.kept.NotDone;

/** What came of comparing two states of the book. @param rows ready to be shown */
record Compared(Sides sides, BookChanges changes, List<Row> rows) {

	static Compared of(EditionsOf editions, Sides sides) throws NotDone {
		BookChanges changes = sides.changes(editions);
		return new Compared(sides, changes, ChangeRows.of(changes));
	}
}
