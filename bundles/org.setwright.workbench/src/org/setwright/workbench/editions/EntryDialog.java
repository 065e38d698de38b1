package org.setwright.workbench.editions;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.setwright.editions.kept.Who;
import org.setwright.workbench.look.EvenHead;
import org.setwright.workbench.look.Spoken;

/** Asks for some lines of text, and for who writes them where Git does not know. */
class EntryDialog extends EvenHead.Dialog {
	private static final int WIDTH = 560;
	private static final int LINES = 8;
	private final Entry entry;
	private int choice;
	private String words;
	private String name;
	private String email;

	EntryDialog(Shell shell, Entry entry) {
		super(shell);
		this.entry = entry;
		words = entry.words();
		name = entry.author().who().name();
		email = entry.author().who().email();
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(entry.title());
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(entry.title());
		setMessage(entry.help());
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().margins(12, 10).numColumns(2).spacing(10, 8).applyTo(area);
		if (!entry.shown().isEmpty()) {
			Text shown = lines(area, Messages.EntryDialog_shown, entry.shown(), SWT.READ_ONLY);
			GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(WIDTH, shown.getLineHeight() * LINES).applyTo(shown);
		}
		if (!entry.choices().isEmpty()) {
			new Label(area, SWT.NONE).setText(Messages.EntryDialog_about);
			Combo about = new Combo(area, SWT.READ_ONLY);
			about.setItems(entry.choices().toArray(String[]::new));
			about.select(0);
			Spoken.as(about, Messages.EntryDialog_about);
			GridDataFactory.fillDefaults().grab(true, false).applyTo(about);
			about.addListener(SWT.Selection, e -> choice = about.getSelectionIndex());
		}
		more(area);
		Label label = new Label(area, SWT.NONE);
		label.setText(entry.label());
		GridDataFactory.fillDefaults().span(2, 1).applyTo(label);
		Text text = lines(area, entry.label(), words, SWT.NONE);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(WIDTH, text.getLineHeight() * LINES).applyTo(text);
		text.addListener(SWT.Modify, e -> {
			words = text.getText();
			enable();
		});
		author(area);
		text.setFocus();
		return area;
	}

	/** Adds what else there is to be looked at or decided, in two columns. */
	protected void more(Composite area) {
		// nothing here
	}

	/** @return whether everything else is decided */
	protected boolean complete() {
		return true;
	}

	/** Tab goes on to the next field, as everywhere else. */
	private static Text lines(Composite area, String spoken, String content, int style) {
		Text text = new Text(area, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP | style);
		text.setText(content);
		Spoken.as(text, spoken);
		text.addListener(SWT.Traverse, e -> e.doit |= e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		return text;
	}

	private void author(Composite area) {
		if (entry.author().known()) {
			field(area, Messages.EntryDialog_by, entry.author().who().toString(), SWT.READ_ONLY, text -> {
				// Git says who it is
			});
		} else {
			field(area, Messages.EntryDialog_name, name, SWT.NONE, text -> name = text);
			field(area, Messages.EntryDialog_email, email, SWT.NONE, text -> email = text);
		}
	}

	private void field(Composite area, String label, String content, int style, Consumer<String> typed) {
		new Label(area, SWT.NONE).setText(label);
		Text field = new Text(area, SWT.BORDER | style);
		field.setText(content);
		Spoken.as(field, label);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
		field.addListener(SWT.Modify, e -> {
			typed.accept(field.getText());
			enable();
		});
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, entry.button(), true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		enable();
	}

	/** Lets it be done as soon as everything is there. */
	protected final void enable() {
		Button button = getButton(IDialogConstants.OK_ID);
		if (button != null) {
			button.setEnabled(complete() && !(entry.demanded() && words.isBlank()) && !name.isBlank() && !email.isBlank());
		}
	}

	/** Asks. @return what was written, or empty when the person thought better of it */
	Optional<Entry.Said> ask() {
		if (open() != Dialog.OK) {
			return Optional.empty();
		}
		Who by = entry.author().known() ? entry.author().who() : new Who(name.strip(), email.strip());
		if (!entry.author().known()) {
			Author.remember(by);
		}
		return Optional.of(new Entry.Said(choice, words, by));
	}
}
