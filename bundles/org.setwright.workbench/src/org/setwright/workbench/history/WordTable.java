package org.setwright.workbench.history;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.book.history.Fault;
import org.setwright.book.history.Mapping;
import org.setwright.book.history.Meaning;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;

/** The different words that stand in a column, what each stands for, and whether that can be read. */
final class WordTable {
	private static final int MOST = 100;
	private final Composite pane;
	private final TableViewer viewer;
	private final Catalogue catalogue;
	private final BiConsumer<String, String> changed;

	/** One word. @param means what it is read as @param fault what is wrong with it, and what to do */
	private record Word(String written, String means, Optional<Fault> fault) {
		String state() {
			return fault.map(f -> f.what() + " " + f.remedy()).orElse(Messages.WordTable_fine); //$NON-NLS-1$
		}
	}

	/** @param catalogue what the book may speak of @param changed told what is written and what it stands for */
	WordTable(Composite parent, Catalogue catalogue, BiConsumer<String, String> changed) {
		this.catalogue = catalogue;
		this.changed = changed;
		pane = new Composite(parent, SWT.NONE);
		viewer = new TableViewer(pane, SWT.BORDER | SWT.FULL_SELECTION);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.getTable().setHeaderVisible(true);
		Spoken.as(viewer.getControl(), Messages.WordTable_name);
		TableColumnLayout layout = new TableColumnLayout();
		pane.setLayout(layout);
		column(layout, Messages.WordTable_written, 25, Word::written, false);
		column(layout, Messages.WordTable_means, 30, Word::means, false).setEditingSupport(editing());
		column(layout, Messages.WordTable_state, 45, Word::state, true);
	}

	private TableViewerColumn column(TableColumnLayout layout, String name, int share, java.util.function.Function<Word, String> text, boolean sign) {
		TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
		column.getColumn().setText(name);
		layout.setColumnData(column.getColumn(), new ColumnWeightData(share, 80));
		column.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object word) {
				return text.apply((Word) word);
			}

			@Override
			public Image getImage(Object word) {
				return sign ? (((Word) word).fault().isEmpty() ? Icon.AS_EXPECTED : Icon.PROBLEM).image() : null;
			}
		});
		return column;
	}

	private EditingSupport editing() {
		TextCellEditor editor = new TextCellEditor(viewer.getTable());
		return new EditingSupport(viewer) {
			@Override
			protected CellEditor getCellEditor(Object word) {
				return editor;
			}

			@Override
			protected boolean canEdit(Object word) {
				return true;
			}

			@Override
			protected Object getValue(Object word) {
				return ((Word) word).means();
			}

			@Override
			protected void setValue(Object word, Object means) {
				changed.accept(((Word) word).written(), (String) means);
			}
		};
	}

	Control control() {
		return pane;
	}

	/** @param cells what stands in the column */
	void show(String heading, Optional<Meaning> meaning, Mapping.Column column, List<String> cells) {
		viewer.setInput(cells.stream().limit(MOST).map(c -> new Word(c, column.read(c), meaning.flatMap(m -> m.fault(heading, column, c, catalogue))))
				.toList());
		ColumnWidths.fit(viewer.getTable());
	}
}
