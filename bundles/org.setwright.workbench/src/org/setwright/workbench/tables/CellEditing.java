package org.setwright.workbench.tables;

import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.tables.Heading;

/** How the cells of one column are written. */
final class CellEditing extends EditingSupport {
	private final TableViewer viewer;
	private final GridDesk desk;
	private final int column;

	CellEditing(TableViewer viewer, GridDesk desk, int column) {
		super(viewer);
		this.viewer = viewer;
		this.desk = desk;
		this.column = column;
	}

	@Override
	protected CellEditor getCellEditor(Object row) {
		Heading heading = desk.table().marks().headings().get(column);
		String name = NLS.bind(Messages.CellEditing_spoken, heading.text(), (Integer) row + 1);
		return heading.free() ? new WrittenCell(viewer.getTable(), heading.choices(), name, text -> typed((Integer) row, text))
				: new ChoiceCell(viewer.getTable(), heading.choices(), name);
	}

	private void typed(int row, String text) {
		if (row < desk.table().sheet().rows()) {
			String refusal = desk.table().refusal(row, column, text);
			desk.say(refusal.isEmpty() ? desk.table().marks().headings().get(column).meaning() : refusal, !refusal.isEmpty());
		}
	}

	@Override
	protected boolean canEdit(Object row) {
		return desk.table().sheet().sound() && column < desk.table().marks().headings().size();
	}

	@Override
	protected Object getValue(Object row) {
		return desk.table().sheet().cell((Integer) row, column);
	}

	@Override
	protected void setValue(Object row, Object text) {
		desk.table().write((Integer) row, column, (String) text);
	}
}
