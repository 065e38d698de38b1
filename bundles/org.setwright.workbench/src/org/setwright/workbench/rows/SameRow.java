package org.setwright.workbench.rows;

import java.util.List;
import org.eclipse.jface.viewers.IElementComparer;
import org.setwright.workbench.rows.RowTree.Manner;

/** Which line of what is shown now is a line of what was shown before. */
record SameRow(Manner manner) implements IElementComparer {
	@Override
	public boolean equals(Object a, Object b) {
		return a instanceof Row one && b instanceof Row other ? key(one).equals(key(other)) : a.equals(b);
	}

	@Override
	public int hashCode(Object element) {
		return element instanceof Row row ? key(row).hashCode() : System.identityHashCode(element);
	}

	private List<String> key(Row row) {
		return manner == Manner.READ || row.cells().isEmpty() ? row.cells() : List.of(row.cell(0), row.cell(row.cells().size() - 1));
	}
}
