package org.setwright.bench.told;

import java.util.ArrayList;
import java.util.List;

/** An answer under construction. */
public final class Rows {
	private final List<Row> rows = new ArrayList<>();

	/** Adds a row that stands nowhere in the book. */
	public Rows add(int depth, Tone tone, String words) {
		return add(depth, tone, words, "");
	}

	/** Adds a row. @param at where it stands; may be empty */
	public Rows add(int depth, Tone tone, String words, String at) {
		rows.add(new Row(depth, tone, words, at));
		return this;
	}

	/** Adds rows as they are. */
	public Rows addAll(List<Row> more) {
		rows.addAll(more);
		return this;
	}

	/** @return whether nothing has been added */
	public boolean isEmpty() {
		return rows.isEmpty();
	}

	/** @return all rows added so far */
	public List<Row> all() {
		return List.copyOf(rows);
	}
}
