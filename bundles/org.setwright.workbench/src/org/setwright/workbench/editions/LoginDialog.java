package org.setwright.workbench.editions;

import java.util.Optional;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.setwright.editions.git.Login;
import org.setwright.workbench.look.EvenHead;
import org.setwright.workbench.look.Spoken;

/** Asks for a name and a password for another place. Neither is kept here. */
final class LoginDialog extends EvenHead.Dialog {
	private static final int WIDTH = 320;
	private final String where;
	private Text user;
	private Text password;
	private Login login;

	/** @param where the address */
	private LoginDialog(Shell shell, String where) {
		super(shell);
		this.where = where;
	}

	/** Asks, from any thread, when the person's own Git helpers know nothing. */
	static Login.Asking asking(Shell shell) {
		return where -> {
			LoginDialog[] asked = new LoginDialog[1];
			shell.getDisplay().syncExec(() -> {
				asked[0] = new LoginDialog(shell, where);
				asked[0].open();
			});
			return Optional.ofNullable(asked[0].login);
		};
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.LoginDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(Messages.LoginDialog_title);
		setMessage(NLS.bind(Messages.LoginDialog_where, where));
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().margins(12, 10).numColumns(2).spacing(10, 8).applyTo(area);
		user = field(area, Messages.LoginDialog_user, SWT.NONE);
		password = field(area, Messages.LoginDialog_password, SWT.PASSWORD);
		return area;
	}

	private static Text field(Composite area, String label, int style) {
		new Label(area, SWT.NONE).setText(label);
		Text text = new Text(area, SWT.BORDER | style);
		Spoken.as(text, label);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
		return text;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, IDialogConstants.OK_LABEL, true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
	}

	@Override
	protected void buttonPressed(int button) {
		if (button == Dialog.OK) {
			login = new Login(user.getText().strip(), password.getText());
		}
		super.buttonPressed(button);
	}
}
