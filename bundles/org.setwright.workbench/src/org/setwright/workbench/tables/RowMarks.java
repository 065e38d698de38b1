package org.setwright.workbench.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.book.TableText;
import org.setwright.engine.tables.Heading;
import org.setwright.engine.tables.TableLook;
import org.setwright.engine.tables.TableLook.Overlap;

/**
 * What is to be said about the rows and cells of a table. Rows and columns count from 0.
 *
 * @param headings one for each column
 * @param cells what is wrong, by row and column; row -1 is the headings
 * @param notes everything, the gravest first
 */
record RowMarks(List<Heading> headings, Map<Cell, List<String>> cells, List<Note> notes) {
	RowMarks {
		headings = List.copyOf(headings);
		cells = Map.copyOf(cells);
		notes = List.copyOf(notes);
	}

	/** A cell. */
	record Cell(int row, int column) {
	}

	/** What a note is about; the gravest first. */
	enum Sort {
		PROBLEM, DISPUTE, OUTRANKED, AGREES, HOLE, REMARK
	}

	/**
	 * A sentence about the table.
	 *
	 * @param rows those it is about, from 0; empty when it is about none
	 * @param column the cell it is about; -1 when about none
	 * @param offered the cells of a row that would mend it, as far as they are known
	 */
	record Note(Sort sort, String sentence, List<Integer> rows, int column, Optional<List<String>> offered) {
	}

	static RowMarks of(TableText read, TableLook look) {
		Map<Position, Cell> places = places(read.table());
		Map<Cell, List<String>> cells = new HashMap<>();
		List<Note> notes = new ArrayList<>();
		Set<Problem> problems = new LinkedHashSet<>(read.problems());
		problems.addAll(look.problems());
		for (Problem problem : problems) {
			Cell cell = places.get(problem.at());
			String sentence = problem.what() + " " + problem.remedy(); //$NON-NLS-1$
			if (cell != null) {
				cells.computeIfAbsent(cell, x -> new ArrayList<>()).add(sentence);
			}
			notes.add(new Note(Sort.PROBLEM, sentence, cell == null || cell.row() < 0 ? List.of() : List.of(cell.row()),
					cell == null ? -1 : cell.column(), Optional.empty()));
		}
		look.overlaps().forEach(o -> notes.add(new Note(sort(o), o.sentence(), List.of(o.row() - 1, o.other() - 1), -1, Optional.empty())));
		look.holes().forEach(h -> notes.add(new Note(Sort.HOLE, NLS.bind(Messages.RowMarks_hole, h.sentence()), List.of(), -1, h.cells())));
		if (!look.remark().isEmpty()) {
			notes.add(new Note(Sort.REMARK, look.remark(), List.of(), -1, Optional.empty()));
		}
		notes.sort(Comparator.comparing(Note::sort));
		return new RowMarks(look.headings(), cells, notes);
	}

	/** @return what is wrong with a cell */
	List<String> cell(int row, int column) {
		return cells.getOrDefault(new Cell(row, column), List.of());
	}

	/** @return the gravest that is to be said of a row */
	Optional<Sort> gravest(int row) {
		return of(row).map(Note::sort).findFirst();
	}

	/** @return the same in a few words: "dispute with 3; agrees with 4"; empty when nothing */
	String inShort(int row) {
		Map<Sort, List<Note>> sorted = of(row).collect(Collectors.groupingBy(Note::sort, java.util.TreeMap::new, Collectors.toList()));
		return sorted.entrySet().stream().map(e -> word(e.getKey(), e.getValue(), row)).collect(Collectors.joining("; ")); //$NON-NLS-1$
	}

	private Stream<Note> of(int row) {
		return notes.stream().filter(n -> n.rows().contains(row));
	}

	private static String word(Sort sort, Collection<Note> notes, int row) {
		String others = notes.stream().flatMap(n -> n.rows().stream()).filter(r -> r != row).distinct().map(r -> Integer.toString(r + 1))
				.collect(Collectors.joining(", ")); //$NON-NLS-1$
		return switch (sort) {
			case PROBLEM -> Messages.RowMarks_problem;
			case DISPUTE -> NLS.bind(Messages.RowMarks_dispute, others);
			case OUTRANKED -> NLS.bind(Messages.RowMarks_outranked, others);
			case AGREES -> NLS.bind(Messages.RowMarks_agrees, others);
			case HOLE, REMARK -> ""; //$NON-NLS-1$
		};
	}

	private static Sort sort(Overlap overlap) {
		return switch (overlap.sort()) {
			case DISPUTE -> Sort.DISPUTE;
			case OUTRANKS -> Sort.OUTRANKED;
			case AGREES -> Sort.AGREES;
		};
	}

	private static Map<Position, Cell> places(Table table) {
		Map<Position, Cell> places = new HashMap<>();
		place(table.header(), -1, places);
		table.rows().forEach(row -> place(row.cells(), row.number() - 1, places));
		return places;
	}

	private static void place(List<Table.Cell> cells, int row, Map<Position, Cell> into) {
		for (int i = 0; i < cells.size(); i++) {
			into.putIfAbsent(cells.get(i).at(), new Cell(row, i));
		}
	}
}
