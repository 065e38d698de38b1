package org.setwright.workbench.cases;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.setwright.check.cases.Accepting;
import org.setwright.workbench.look.EvenHead;
import org.setwright.workbench.look.Spoken;

/** Asks who accepts new outcomes, and why; shows what changes. */
final class AcceptDialog extends EvenHead.Dialog {
	private static final int WIDTH = 520;
	private static final int LINES = 6;
	private final List<CaseLine.OfPoint> points;
	private String name;
	private String reason = ""; //$NON-NLS-1$
	private Accepting accepting;

	/** @param name who it was the last time; may be empty */
	AcceptDialog(Shell shell, List<CaseLine.OfPoint> points, String name) {
		super(shell);
		this.points = points;
		this.name = name;
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.AcceptDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(Messages.AcceptDialog_title);
		setMessage(Messages.AcceptDialog_message);
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().margins(12, 10).numColumns(2).spacing(10, 8).applyTo(area);
		Text changes = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP);
		changes.setText(points.stream().map(AcceptDialog::change).collect(Collectors.joining("\n"))); //$NON-NLS-1$
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(WIDTH, changes.getLineHeight() * LINES).applyTo(changes);
		Spoken.as(changes, Messages.AcceptDialog_changes);
		field(area, Messages.AcceptDialog_name, name, text -> name = text);
		field(area, Messages.AcceptDialog_reason, reason, text -> reason = text).setFocus();
		return area;
	}

	private static String change(CaseLine.OfPoint of) {
		String was = of.point().expected().isEmpty() ? Messages.CaseColumns_notAsked : of.point().expected();
		return NLS.bind(Messages.AcceptDialog_change, new Object[] { of.checked().job().name(), of.point().what(), was, Accepting.becomes(of.point()) });
	}

	private Text field(Composite area, String label, String text, java.util.function.Consumer<String> typed) {
		new Label(area, SWT.NONE).setText(label);
		Text field = new Text(area, SWT.BORDER);
		field.setText(text);
		Spoken.as(field, label);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
		field.addListener(SWT.Modify, e -> {
			typed.accept(field.getText());
			enable();
		});
		return field;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.AcceptDialog_accept, true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		enable();
	}

	private void enable() {
		Button accept = getButton(IDialogConstants.OK_ID);
		if (accept != null) {
			accept.setEnabled(!name.isBlank() && !reason.isBlank());
		}
	}

	@Override
	protected void okPressed() {
		accepting = new Accepting(LocalDate.now(), name, reason);
		super.okPressed();
	}

	/** Asks. @return what was said, or empty when the person thought better of it */
	Optional<Accepting> ask() {
		return open() == Dialog.OK ? Optional.of(accepting) : Optional.empty();
	}
}
