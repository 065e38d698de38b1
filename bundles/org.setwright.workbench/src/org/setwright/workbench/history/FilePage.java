package org.setwright.workbench.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.setwright.book.history.Preview;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;

/** Which file, where its jobs go, and how it begins. */
final class FilePage extends WizardPage {
	private static final int SHOWN = 20;
	private static final int TABLE_HEIGHT = 220;
	private final ImportPlan plan;
	private Text file;
	private Button elsewhere;
	private Text folder;
	private Table first;

	FilePage(ImportPlan plan) {
		super("file", Messages.FilePage_title, null); //$NON-NLS-1$
		this.plan = plan;
		setMessage(Messages.FilePage_message);
	}

	@Override
	public void createControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).applyTo(area);
		new Label(area, SWT.NONE).setText(Messages.FilePage_file);
		file = text(area, Messages.FilePage_file);
		file.addListener(SWT.Modify, e -> read());
		button(area, Messages.FilePage_browse, this::browseFile);
		elsewhere = new Button(area, SWT.CHECK);
		elsewhere.setText(Messages.FilePage_elsewhere);
		elsewhere.addListener(SWT.Selection, e -> where());
		folder = text(area, Messages.FilePage_elsewhere);
		folder.addListener(SWT.Modify, e -> where());
		button(area, Messages.FilePage_browseFolder, this::browseFolder);
		first = new Table(area, SWT.BORDER | SWT.FULL_SELECTION);
		first.setHeaderVisible(true);
		first.setLinesVisible(true);
		Spoken.as(first, Messages.FilePage_first);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(SWT.DEFAULT, TABLE_HEIGHT).applyTo(first);
		setControl(area);
		where();
		setPageComplete(false);
	}

	private static Text text(Composite area, String name) {
		Text text = new Text(area, SWT.BORDER);
		Spoken.as(text, name);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		return text;
	}

	private static void button(Composite area, String label, Runnable does) {
		Button button = new Button(area, SWT.PUSH);
		button.setText(label);
		GridDataFactory.fillDefaults().applyTo(button);
		button.addListener(SWT.Selection, e -> does.run());
	}

	private void browseFile() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
		dialog.setFilterExtensions(new String[] { "*.csv;*.CSV", "*" }); //$NON-NLS-1$ //$NON-NLS-2$
		Optional.ofNullable(dialog.open()).ifPresent(file::setText);
	}

	private void browseFolder() {
		Optional.ofNullable(new DirectoryDialog(getShell()).open()).ifPresent(name -> {
			elsewhere.setSelection(true);
			folder.setText(name);
		});
	}

	private void where() {
		folder.setEnabled(elsewhere.getSelection());
		plan.into(elsewhere.getSelection() && !folder.getText().isBlank() ? Optional.of(Path.of(folder.getText().strip())) : Optional.empty());
		complete();
	}

	private void read() {
		setErrorMessage(null);
		try {
			Path csv = Path.of(file.getText().strip());
			if (!Files.isRegularFile(csv)) {
				setErrorMessage(file.getText().isBlank() ? null : NLS.bind(Messages.FilePage_noFile, csv));
				show(new Preview(List.of(), List.of(), false));
			} else {
				plan.file(csv);
				show(plan.preview().orElseThrow());
			}
		} catch (InvalidPathException e) {
			setErrorMessage(NLS.bind(Messages.FilePage_noFile, file.getText()));
			show(new Preview(List.of(), List.of(), false));
		} catch (IOException e) {
			setErrorMessage(e.getMessage());
			show(new Preview(List.of(), List.of(), false));
		}
		complete();
	}

	private void complete() {
		boolean folderSaid = !elsewhere.getSelection() || !folder.getText().isBlank();
		setPageComplete(getErrorMessage() == null && plan.preview().isPresent() && first.getColumnCount() > 0 && folderSaid);
	}

	private void show(Preview preview) {
		first.setRedraw(false);
		first.removeAll();
		for (TableColumn column : first.getColumns()) {
			column.dispose();
		}
		for (String heading : preview.headings()) {
			TableColumn column = new TableColumn(first, SWT.LEFT);
			column.setText(heading);
		}
		for (List<String> row : preview.rows().subList(0, Math.min(SHOWN, preview.rows().size()))) {
			new TableItem(first, SWT.NONE).setText(row.stream().map(cell -> cell.replaceAll("\\s*\\R\\s*", " ")).toArray(String[]::new)); //$NON-NLS-1$ //$NON-NLS-2$
		}
		ColumnWidths.pack(first);
		first.setRedraw(true);
	}
}
