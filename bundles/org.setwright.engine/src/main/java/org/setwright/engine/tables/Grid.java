package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.Table;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.engine.tables.TableLook.Hole;
import org.setwright.engine.tables.TableLook.Overlap;

/**
 * The rows as boxes over the axes of the conditions.
 *
 * @param axes by column
 * @param boxes for each sound row, by its number, the pieces it takes of each axis
 * @param rules the sound rows, by number
 */
record Grid(Map<Integer, Axis> axes, Map<Integer, Map<Integer, BitSet>> boxes, Map<Integer, Rule> rules) {

	static Grid of(Table table, List<Column> columns, List<Rule> sound) {
		Map<Integer, Rule> rules = new LinkedHashMap<>();
		Map<Integer, Table.Row> rows = new LinkedHashMap<>();
		for (Table.Row row : table.rows()) {
			sound.stream().filter(r -> r.at().equals(row.cells().get(0).at())).findFirst().ifPresent(r -> {
				rules.put(row.number(), r);
				rows.put(row.number(), row);
			});
		}
		Map<Integer, Axis> axes = new LinkedHashMap<>();
		Map<Integer, Map<Integer, BitSet>> boxes = new HashMap<>();
		rows.keySet().forEach(n -> boxes.put(n, new LinkedHashMap<>()));
		for (int i = 0; i < columns.size(); i++) {
			if (columns.get(i) instanceof Column.Asks asks && !asks.kind().many()) {
				int at = i;
				Map<Integer, Optional<Test>> tests = new LinkedHashMap<>();
				rows.forEach((n, row) -> tests.put(n, CellTests.read(row.cells().get(at), asks, new ArrayList<>())));
				Axis axis = Axis.of(asks, tests.values().stream().flatMap(Optional::stream).toList());
				axes.put(i, axis);
				tests.forEach((n, test) -> boxes.get(n).put(at, axis.passing(test)));
			}
		}
		return new Grid(axes, boxes, rules);
	}

	List<Overlap> overlaps() {
		List<Overlap> overlaps = new ArrayList<>();
		List<Integer> numbers = List.copyOf(rules.keySet());
		for (int i = 0; i < numbers.size(); i++) {
			for (int j = i + 1; j < numbers.size(); j++) {
				int row = numbers.get(i);
				int other = numbers.get(j);
				if (axes.keySet().stream().allMatch(c -> boxes.get(row).get(c).intersects(boxes.get(other).get(c)))) {
					overlap(row, other).ifPresent(overlaps::add);
				}
			}
		}
		return overlaps;
	}

	/** Rows that propose for different settings do not meet. */
	private Optional<Overlap> overlap(int row, int other) {
		Rule one = rules.get(row);
		Rule two = rules.get(other);
		String common = one.proposals().stream().filter(p -> !two.proposals(p.setting()).isEmpty())
				.map(p -> p.setting().label()).collect(Collectors.joining(", "));
		if (common.isEmpty()) {
			return Optional.empty();
		}
		String both = "Rows " + row + " and " + other + " can both hold on one job";
		String differing = one.proposals().stream().filter(p -> two.proposals(p.setting()).stream().anyMatch(q -> !same(p, q)))
				.map(p -> p.setting().label()).collect(Collectors.joining(", "));
		if (differing.isEmpty()) {
			return Optional.of(new Overlap(row, other, Overlap.Sort.AGREES, both + " and say the same."));
		} else if (one.authority() == two.authority()) {
			return Optional.of(new Overlap(row, other, Overlap.Sort.DISPUTE, both + " and differ about " + differing + ": that is a dispute."));
		}
		int stronger = one.authority().outranks(two.authority()) ? row : other;
		return Optional.of(new Overlap(row, other, Overlap.Sort.OUTRANKS,
				both + " and differ about " + differing + "; row " + stronger + " outranks the other."));
	}

	private static boolean same(Action.Propose one, Action.Propose two) {
		return ((Operand.Literal) one.value()).value().same(((Operand.Literal) two.value()).value());
	}

	/** @param columns how many the table has @return what no row takes */
	List<Hole> holes(int columns) {
		return Holes.of(axes, boxes.values()).stream().map(h -> hole(h, columns)).toList();
	}

	private Hole hole(Map<Integer, BitSet> box, int columns) {
		List<String> clauses = new ArrayList<>();
		List<Optional<String>> cells = new ArrayList<>();
		for (int i = 0; i < columns; i++) {
			Axis axis = axes.get(i);
			cells.add(axis == null ? Optional.of("") : AxisWords.cell(axis, box.get(i)));
			String words = axis == null ? "" : AxisWords.words(axis, box.get(i));
			if (!words.isEmpty()) {
				clauses.add(axis.column().kind().label() + " " + axis.column().field().label() + ": " + words);
			}
		}
		return new Hole(clauses.isEmpty() ? "no row speaks at all" : String.join("; ", clauses),
				cells.stream().allMatch(Optional::isPresent) ? Optional.of(cells.stream().map(Optional::get).toList()) : Optional.empty());
	}
}
