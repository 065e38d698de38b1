package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Catalogue;

/**
 * What can be said of a table without a job: what is wrong with it, which rows can both hold on one job, and which known
 * answers no row takes.
 *
 * @param headings one for each column
 * @param problems what is wrong with headings and cells
 * @param overlaps pairs of rows that can both hold, by row
 * @param holes answers no row takes, of those the table is about; empty while there are problems
 * @param remark why no holes are looked for, or how many are left out; may be empty
 */
public record TableLook(List<Heading> headings, List<Problem> problems, List<Overlap> overlaps, List<Hole> holes, String remark) {
	/** More holes are not listed. */
	public static final int MOST_HOLES = 40;

	public TableLook {
		headings = List.copyOf(headings);
		problems = List.copyOf(problems);
		overlaps = List.copyOf(overlaps);
		holes = List.copyOf(holes);
	}

	/**
	 * Two rows that can both hold.
	 *
	 * @param row the first, from 1
	 * @param other the second, from 1
	 * @param sort what comes of it
	 * @param sentence the same for people
	 */
	public record Overlap(int row, int other, Sort sort, String sentence) {
		/** What comes of two rows that both hold: a dispute, one outranking the other, or nothing. */
		public enum Sort {
			DISPUTE, OUTRANKS, AGREES
		}
	}

	/**
	 * Answers no row takes. A column in which every row says the same says what the table is about, and is not held against it.
	 *
	 * @param sentence for people
	 * @param cells a row that takes exactly these, outcomes left empty; empty when the cells of one row cannot say it
	 */
	public record Hole(String sentence, Optional<List<String>> cells) {
	}

	/** @return what can be said of {@code table} */
	public static TableLook of(Table table, Catalogue catalogue) {
		List<Problem> problems = new ArrayList<>();
		List<Rule> rules = TableRules.of(table, catalogue, problems);
		List<Heading> headings = Heading.of(table, catalogue);
		List<Problem> inHeader = new ArrayList<>();
		List<Column> columns = Columns.of(table, catalogue, inHeader);
		if (!inHeader.isEmpty()) {
			return new TableLook(headings, problems, List.of(), List.of(), "");
		}
		Grid grid = Grid.of(table, columns, rules);
		String many = columns.stream().filter(c -> c instanceof Column.Asks asks && asks.kind().many()).map(c -> ((Column.Asks) c).kind().key())
				.findFirst().orElse("");
		if (!problems.isEmpty() || !many.isEmpty() || grid.axes().isEmpty()) {
			return new TableLook(headings, problems, grid.overlaps(), List.of(),
					many.isEmpty() ? "" : "A job may have several " + many + ", so no row can be missed for certain.");
		}
		List<Hole> open = grid.holes(headings.size());
		return new TableLook(headings, problems, grid.overlaps(), open.stream().limit(MOST_HOLES).toList(),
				open.size() > MOST_HOLES ? (open.size() - MOST_HOLES) + " more are not listed." : "");
	}
}
