package org.setwright.editions.compare;

import java.util.ArrayList;
import java.util.List;

/** Two texts line by line beside each other. Immutable. */
public record SideBySide(List<Row> rows) {
	public SideBySide {
		rows = List.copyOf(rows);
	}

	/** One line on both sides. @param left empty when it stands only on the right @param changed whether the sides differ */
	public record Row(String left, String right, boolean changed) {
	}

	/** @return {@code left} and {@code right} with the lines they share in one row */
	public static SideBySide of(String left, String right) {
		List<String> one = left.lines().map(String::stripTrailing).toList();
		List<String> two = right.lines().map(String::stripTrailing).toList();
		int[][] shared = new int[one.size() + 1][two.size() + 1];
		for (int i = one.size() - 1; i >= 0; i--) {
			for (int j = two.size() - 1; j >= 0; j--) {
				shared[i][j] = one.get(i).equals(two.get(j)) ? shared[i + 1][j + 1] + 1 : Math.max(shared[i + 1][j], shared[i][j + 1]);
			}
		}
		List<Row> rows = new ArrayList<>();
		List<String> only = new ArrayList<>();
		List<String> others = new ArrayList<>();
		int i = 0;
		int j = 0;
		while (i < one.size() || j < two.size()) {
			if (i < one.size() && j < two.size() && one.get(i).equals(two.get(j))) {
				different(rows, only, others);
				rows.add(new Row(one.get(i++), two.get(j++), false));
			} else if (j >= two.size() || i < one.size() && shared[i + 1][j] >= shared[i][j + 1]) {
				only.add(one.get(i++));
			} else {
				others.add(two.get(j++));
			}
		}
		different(rows, only, others);
		return new SideBySide(rows);
	}

	private static void different(List<Row> rows, List<String> only, List<String> others) {
		for (int k = 0; k < Math.max(only.size(), others.size()); k++) {
			rows.add(new Row(k < only.size() ? only.get(k) : "", k < others.size() ? others.get(k) : "", true));
		}
		only.clear();
		others.clear();
	}
}
