package org.setwright.workbench.welcome;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.setwright.workbench.look.EvenHead;

/** Asks where the copy of the starter book goes. */
final class CopyStarterDialog extends EvenHead.Dialog {
	private static final int WIDTH_IN_CHARACTERS = 56;
	private Text place;
	private Text name;
	private Path chosen;

	CopyStarterDialog(Shell shell) {
		super(shell);
		setHelpAvailable(false);
	}

	/** @return the folder to be made, once the dialog has been confirmed */
	Path folder() {
		return chosen;
	}

	/** @return what is wrong with the folder {@code name} in {@code place}, or empty when it may be made */
	static Optional<String> wrong(String place, String name) {
		try {
			Path parent = Path.of(place.strip());
			Path folder = parent.resolve(name.strip());
			if (place.isBlank() || !Files.isDirectory(parent)) {
				return Optional.of(Messages.CopyStarterDialog_noPlace);
			} else if (name.isBlank() || !parent.equals(folder.getParent())) {
				return Optional.of(Messages.CopyStarterDialog_noName);
			}
			return Files.exists(folder) ? Optional.of(NLS.bind(Messages.CopyStarterDialog_taken, folder)) : Optional.empty();
		} catch (InvalidPathException written) {
			return Optional.of(Messages.CopyStarterDialog_noName);
		}
	}

	@Override
	public void create() {
		super.create();
		getShell().setText(Messages.CopyStarterDialog_window);
		setTitle(Messages.CopyStarterDialog_title);
		check();
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		Composite fields = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(14, 14).spacing(8, 8).applyTo(fields);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
		place = text(fields, Messages.CopyStarterDialog_place, System.getProperty("user.home"), 1); //$NON-NLS-1$
		Button browse = new Button(fields, SWT.PUSH);
		browse.setText(Messages.CopyStarterDialog_browse);
		browse.addListener(SWT.Selection, e -> browse());
		name = text(fields, Messages.CopyStarterDialog_name, Messages.CopyStarterDialog_defaultName, 2);
		return area;
	}

	private Text text(Composite parent, String label, String content, int columns) {
		new Label(parent, SWT.NONE).setText(label);
		Text text = new Text(parent, SWT.BORDER);
		text.setText(content);
		text.addListener(SWT.Modify, e -> check());
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).align(SWT.FILL, SWT.CENTER)
				.hint(convertWidthInCharsToPixels(WIDTH_IN_CHARACTERS), SWT.DEFAULT).applyTo(text);
		return text;
	}

	private void browse() {
		DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.OPEN);
		dialog.setFilterPath(place.getText());
		dialog.setMessage(Messages.CopyStarterDialog_choosePlace);
		Optional.ofNullable(dialog.open()).ifPresent(place::setText);
	}

	private void check() {
		if (getButton(IDialogConstants.OK_ID) == null) {
			return;
		}
		Optional<String> wrong = wrong(place.getText(), name.getText());
		setErrorMessage(wrong.orElse(null));
		if (wrong.isEmpty()) {
			setMessage(NLS.bind(Messages.CopyStarterDialog_willMake,
					Path.of(place.getText().strip()).resolve(name.getText().strip())));
		}
		getButton(IDialogConstants.OK_ID).setEnabled(wrong.isEmpty());
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.CopyStarterDialog_copy, true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
	}

	@Override
	protected void okPressed() {
		chosen = Path.of(place.getText().strip()).resolve(name.getText().strip());
		super.okPressed();
	}

	@Override
	protected boolean isResizable() {
		return true;
	}
}
