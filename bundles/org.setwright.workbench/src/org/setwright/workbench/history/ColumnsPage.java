package org.setwright.workbench.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.setwright.book.AtomicFile;
import org.setwright.book.Problem;
import org.setwright.book.history.Mapping;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;

/** What each column means, in the words of the trade. */
final class ColumnsPage extends WizardPage {
	private static final int TABLE_HEIGHT = 150;
	private static final int EXAMPLES = 3;
	private final ImportPlan plan;
	private Table columns;
	private MeaningPane meaning;
	private List<String> shown = List.of();

	ColumnsPage(ImportPlan plan) {
		super("columns", Messages.ColumnsPage_title, null); //$NON-NLS-1$
		this.plan = plan;
		setMessage(Messages.ColumnsPage_message);
	}

	@Override
	public void createControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
		columns = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		columns.setHeaderVisible(true);
		Spoken.as(columns, Messages.ColumnsPage_columns);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(SWT.DEFAULT, TABLE_HEIGHT).applyTo(columns);
		List<String> headings = List.of(Messages.ColumnsPage_heading, Messages.ColumnsPage_examples, Messages.ColumnsPage_means, Messages.ColumnsPage_unit);
		headings.forEach(h -> new TableColumn(columns, SWT.LEFT).setText(h));
		columns.addListener(SWT.Selection, e -> picked());
		meaning = new MeaningPane(area, plan.catalogue(), this::changed);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(meaning.control());
		button(area, Messages.ColumnsPage_load, this::load);
		button(area, Messages.ColumnsPage_save, this::save);
		setControl(area);
		setPageComplete(false);
	}

	private static void button(Composite area, String label, Runnable does) {
		Button button = new Button(area, SWT.PUSH);
		button.setText(label);
		button.addListener(SWT.Selection, e -> does.run());
	}

	@Override
	public void setVisible(boolean visible) {
		if (visible && !shown.equals(headings())) {
			shown = headings();
			columns.removeAll();
			shown.forEach(h -> new TableItem(columns, SWT.NONE));
			columns.setSelection(0);
		}
		if (visible) {
			refresh();
			ColumnWidths.pack(columns);
			picked();
		}
		super.setVisible(visible);
	}

	private List<String> headings() {
		return plan.preview().map(p -> p.headings()).orElse(List.of());
	}

	private void refresh() {
		for (int i = 0; i < shown.size(); i++) {
			Mapping.Column column = plan.mapping().column(shown.get(i));
			String examples = plan.preview().orElseThrow().cells(i).stream().limit(EXAMPLES).collect(Collectors.joining(Messages.ColumnsPage_between));
			columns.getItem(i).setText(new String[] { shown.get(i), examples, column.to(), column.unit() });
		}
		Optional<String> wrong = Columns.wrong(shown, plan.mapping(), plan.catalogue());
		setErrorMessage(wrong.orElse(null));
		setPageComplete(wrong.isEmpty());
	}

	private void picked() {
		int at = columns.getSelectionIndex();
		if (at >= 0) {
			meaning.show(shown.get(at), plan.mapping().column(shown.get(at)), plan.preview().orElseThrow().cells(at));
		}
	}

	private void changed(Mapping.Column column) {
		plan.mapping(plan.mapping().with(shown.get(columns.getSelectionIndex()), column));
		refresh();
	}

	private void load() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
		dialog.setFilterExtensions(new String[] { "*.yaml", "*" }); //$NON-NLS-1$ //$NON-NLS-2$
		Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::load);
	}

	/** Takes what {@code file} says of the columns; what it says of others is left out. */
	void load(Path file) {
		try {
			Mapping.Read read = Mapping.read(file.getFileName().toString(), Files.readString(file), plan.catalogue());
			Optional<Problem> fault = read.problems().stream().findFirst();
			if (fault.isPresent()) {
				setErrorMessage(fault.get().toString());
				return;
			}
			for (String heading : shown) {
				if (read.mapping().columns().containsKey(Columns.key(heading))) {
					plan.mapping(plan.mapping().with(heading, read.mapping().column(heading)));
				}
			}
			refresh();
			picked();
		} catch (IOException e) {
			setErrorMessage(NLS.bind(Messages.ColumnsPage_notRead, file.getFileName()));
		}
	}

	private void save() {
		FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
		dialog.setFilterExtensions(new String[] { "*.yaml" }); //$NON-NLS-1$
		dialog.setOverwrite(true);
		Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::save);
	}

	/** Writes what the columns mean to {@code file}, for the next time and for the word "import". */
	void save(Path file) {
		try {
			AtomicFile.write(file, plan.mapping().text(shown));
			setMessage(NLS.bind(Messages.ColumnsPage_saved, file.getFileName()), INFORMATION);
		} catch (IOException e) {
			setErrorMessage(NLS.bind(Messages.ColumnsPage_notSaved, file.getFileName()));
		}
	}
}
