package org.setwright.workbench.tables;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.sheet.TableSheet;
import org.setwright.engine.tables.Heading;
import org.setwright.trade.catalogue.Authority;

/** What stands in a row that is added: the authority and source of the row above, because no row goes without. */
final class NewRow {
	private NewRow() {
	}

	/** @param below the row it goes below; -1 for the first @param known what is known of its cells; may be shorter */
	static List<String> of(TableSheet sheet, List<Heading> headings, int below, List<String> known) {
		List<String> cells = new ArrayList<>();
		for (int i = 0; i < sheet.headings().size(); i++) {
			String said = i < known.size() ? known.get(i) : ""; //$NON-NLS-1$
			String above = below < 0 ? "" : sheet.cell(below, i); //$NON-NLS-1$
			cells.add(said.isEmpty() && i < headings.size() ? usual(headings.get(i).sort(), above) : said);
		}
		return cells;
	}

	private static String usual(Heading.Sort sort, String above) {
		return switch (sort) {
			case AUTHORITY -> above.isEmpty() ? Authority.SHOP_PRACTICE.label() : above;
			case SOURCE -> above.isEmpty() ? "common practice" : above; //$NON-NLS-1$
			case CONDITION, OUTCOME, REASON, NOT_UNDERSTOOD -> ""; //$NON-NLS-1$
		};
	}
}
