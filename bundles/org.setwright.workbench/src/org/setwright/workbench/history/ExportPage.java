package org.setwright.workbench.history;

import java.nio.file.Files;
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
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.setwright.book.history.HistoryResult;
import org.setwright.workbench.look.Spoken;

/** Which file to write; what is wrong with a job that cannot be read. */
final class ExportPage extends WizardPage {
	private Text file;
	private FaultTable faults;

	ExportPage() {
		super("export", Messages.ExportPage_title, null); //$NON-NLS-1$
		setMessage(Messages.ExportPage_message);
	}

	@Override
	public void createControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).applyTo(area);
		new Label(area, SWT.NONE).setText(Messages.FilePage_file);
		file = new Text(area, SWT.BORDER);
		Spoken.as(file, Messages.FilePage_file);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(file);
		file.addListener(SWT.Modify, e -> typed());
		Button browse = new Button(area, SWT.PUSH);
		browse.setText(Messages.FilePage_browse);
		browse.addListener(SWT.Selection, e -> browse());
		faults = new FaultTable(area);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(SWT.DEFAULT, FaultTable.HEIGHT).applyTo(faults.control());
		faults.control().setVisible(false);
		setControl(area);
		setPageComplete(false);
	}

	private void browse() {
		FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
		dialog.setFilterExtensions(new String[] { "*.csv" }); //$NON-NLS-1$
		dialog.setFileName("jobs.csv"); //$NON-NLS-1$
		Optional.ofNullable(dialog.open()).ifPresent(file::setText);
	}

	private void typed() {
		Path parent = file.getText().isBlank() ? null : file().toAbsolutePath().getParent();
		boolean possible = parent != null && Files.isDirectory(parent) && !Files.isDirectory(file());
		setErrorMessage(possible || file.getText().isBlank() ? null : NLS.bind(Messages.ExportPage_noFolder, file.getText().strip()));
		setMessage(possible && Files.exists(file()) ? NLS.bind(Messages.ExportPage_replaces, file().getFileName()) : Messages.ExportPage_message,
				possible && Files.exists(file()) ? WARNING : NONE);
		setPageComplete(possible);
	}

	/** @return the file to write */
	Path file() {
		return Path.of(file.getText().strip());
	}

	/** Shows what was in the way. */
	void show(HistoryResult came) {
		faults.control().setVisible(!came.faults().isEmpty());
		faults.show(List.copyOf(came.faults()));
		if (came.cancelled()) {
			setMessage(Messages.ExportPage_ended, WARNING);
		} else if (!came.faults().isEmpty()) {
			setErrorMessage(NLS.bind(Messages.ExportPage_faults, came.faults().size() + came.more()));
		}
	}
}
