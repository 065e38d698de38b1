package org.setwright.workbench.tables;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.tables.RowMarks.Note;
import org.setwright.workbench.tables.RowMarks.Sort;

/** Everything that is to be said about the table: what is wrong, which rows meet, what no row takes. */
final class NoteList {
	private final TableViewer viewer;

	/** @param opened told which note somebody wants to go after */
	NoteList(Composite parent, Consumer<Note> opened) {
		viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object note) {
				return ((Note) note).sentence();
			}

			@Override
			public Image getImage(Object note) {
				return sign(((Note) note).sort()).image();
			}

			@Override
			public String getToolTipText(Object note) {
				return Lines.broken(((Note) note).sentence());
			}
		});
		ColumnViewerToolTipSupport.enableFor(viewer);
		viewer.addOpenListener(e -> picked().ifPresent(opened));
		Spoken.as(viewer.getTable(), Messages.NoteList_name);
	}

	static Icon sign(Sort sort) {
		return switch (sort) {
			case PROBLEM -> Icon.PROBLEM;
			case DISPUTE -> Icon.DISPUTED;
			case OUTRANKED -> Icon.OUTRANKED;
			case AGREES -> Icon.SETTLED;
			case HOLE -> Icon.GAP;
			case REMARK -> Icon.NOTE;
		};
	}

	TableViewer viewer() {
		return viewer;
	}

	Optional<Note> picked() {
		return Optional.ofNullable((Note) viewer.getStructuredSelection().getFirstElement());
	}

	void show(List<Note> notes) {
		if (!notes.equals(viewer.getInput())) {
			viewer.setInput(notes);
		}
	}
}
