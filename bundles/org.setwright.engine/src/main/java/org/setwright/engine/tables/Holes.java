package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the answers that no row takes, as boxes: for each column the pieces of its axis. */
final class Holes {
	private static final int MOST_TO_JOIN = 300;

	private Holes() {
	}

	/** @return what is left of all answers the table is about when each row takes its own away */
	static List<Map<Integer, BitSet>> of(Map<Integer, Axis> axes, Collection<Map<Integer, BitSet>> rows) {
		Map<Integer, BitSet> everything = new LinkedHashMap<>();
		axes.forEach((column, axis) -> everything.put(column, about(axis, rows.stream().map(r -> r.get(column)).toList())));
		List<Map<Integer, BitSet>> open = List.of(everything);
		for (Map<Integer, BitSet> taken : rows) {
			open = open.stream().flatMap(box -> less(box, taken).stream()).toList();
		}
		return open.size() > MOST_TO_JOIN ? open : joined(open);
	}

	/** What every row says alike is what the table is about; the unknown answer belongs to it only where some row asks for it. */
	private static BitSet about(Axis axis, List<BitSet> cells) {
		BitSet every = new BitSet();
		every.set(0, axis.pieces().size());
		List<BitSet> said = cells.stream().distinct().toList();
		if (said.size() == 1 && !said.get(0).equals(every)) {
			return said.get(0);
		}
		return said.stream().anyMatch(c -> c.get(0) && !c.equals(every)) ? every : axis.known();
	}

	private static List<Map<Integer, BitSet>> less(Map<Integer, BitSet> box, Map<Integer, BitSet> taken) {
		List<Map<Integer, BitSet>> left = new ArrayList<>();
		Map<Integer, BitSet> rest = new LinkedHashMap<>(box);
		for (Integer column : box.keySet()) {
			BitSet outside = (BitSet) rest.get(column).clone();
			outside.andNot(taken.get(column));
			BitSet inside = (BitSet) rest.get(column).clone();
			inside.and(taken.get(column));
			if (!outside.isEmpty()) {
				Map<Integer, BitSet> part = new LinkedHashMap<>(rest);
				part.put(column, outside);
				left.add(part);
			}
			if (inside.isEmpty()) {
				return left;
			}
			rest.put(column, inside);
		}
		return left;
	}

	/** Two boxes that differ in one column are one box. */
	private static List<Map<Integer, BitSet>> joined(List<Map<Integer, BitSet>> boxes) {
		List<Map<Integer, BitSet>> joined = new ArrayList<>(boxes);
		for (int i = 0; i < joined.size(); i++) {
			for (int j = i + 1; j < joined.size(); j++) {
				List<Integer> differing = differing(joined.get(i), joined.get(j));
				if (differing.size() == 1) {
					joined.set(i, joined(joined.get(i), joined.remove(j), differing.get(0)));
					return joined(joined);
				}
			}
		}
		return joined;
	}

	private static Map<Integer, BitSet> joined(Map<Integer, BitSet> one, Map<Integer, BitSet> other, Integer column) {
		BitSet both = (BitSet) one.get(column).clone();
		both.or(other.get(column));
		Map<Integer, BitSet> joined = new LinkedHashMap<>(one);
		joined.put(column, both);
		return joined;
	}

	private static List<Integer> differing(Map<Integer, BitSet> one, Map<Integer, BitSet> other) {
		return one.keySet().stream().filter(column -> !one.get(column).equals(other.get(column))).toList();
	}
}
