package org.setwright.workbench.jobform;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.look.Spoken;

/** What the shop calls the job, and notes. */
final class AboutPage implements FormPage {
	private static final int NOTES_HEIGHT = 160;
	private static final int WIDTH = 200;
	private final FormDesk desk;
	private final Text name;
	private final Text notes;
	private JobCase shown;

	AboutPage(Composite parent, FormDesk desk) {
		this.desk = desk;
		Composite grid = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 8).applyTo(grid);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
		name = text(grid, Messages.AboutPage_name, SWT.SINGLE);
		name.addListener(SWT.DefaultSelection, e -> takeName());
		name.addListener(SWT.FocusOut, e -> takeName());
		name.addListener(SWT.Modify,
				e -> desk.say(name.getText().isBlank() ? Messages.AboutPage_noName : Messages.AboutPage_nameHelp, name.getText().isBlank()));
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(name);
		notes = text(grid, Messages.AboutPage_notes, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
		// Tab goes on to the next field, as everywhere else
		notes.addListener(SWT.Traverse, e -> e.doit |= e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		notes.addListener(SWT.FocusOut, e -> takeNotes());
		notes.addListener(SWT.FocusIn, e -> desk.say(Messages.AboutPage_notesHelp, false));
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, NOTES_HEIGHT).applyTo(notes);
	}

	private static Text text(Composite grid, String label, int style) {
		Label before = new Label(grid, SWT.NONE);
		before.setText(label);
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).indent(0, 6).applyTo(before);
		Text text = new Text(grid, SWT.BORDER | style);
		Spoken.as(text, label);
		return text;
	}

	private void takeName() {
		String wanted = name.getText().strip();
		if (shown != null && !wanted.isEmpty() && !wanted.equals(shown.name())) {
			desk.edit(new JobEdit.Named(wanted));
		}
	}

	private void takeNotes() {
		String wanted = notes.getText().replace("\r\n", "\n").stripTrailing(); //$NON-NLS-1$ //$NON-NLS-2$
		if (shown != null && !wanted.equals(shown.notes())) {
			desk.edit(new JobEdit.Noted(wanted));
		}
	}

	@Override
	public void show(JobCase job) {
		if (shown == null || !shown.name().equals(job.name())) {
			name.setText(job.name());
		}
		if (shown == null || !shown.notes().equals(job.notes())) {
			notes.setText(job.notes());
		}
		shown = job;
	}

	@Override
	public void focus(JobField field) {
		name.setFocus();
	}
}
