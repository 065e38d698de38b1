package org.setwright.workbench.uses;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.ltk.core.refactoring.RefactoringStatus;
import org.eclipse.ltk.ui.refactoring.RefactoringWizard;
import org.eclipse.ltk.ui.refactoring.UserInputWizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.setwright.workbench.look.Spoken;

/** Asks for the new name, and shows every change before it is made. */
final class RenameWizard extends RefactoringWizard {
	private final RenameEverywhere rename;

	RenameWizard(RenameEverywhere rename) {
		super(rename, DIALOG_BASED_USER_INTERFACE | PREVIEW_EXPAND_FIRST_NODE);
		this.rename = rename;
		setDefaultPageTitle(rename.getName());
	}

	@Override
	protected void addUserInputPages() {
		addPage(new Page(rename));
	}

	/** Where the name is written. */
	private static final class Page extends UserInputWizardPage {
		private final RenameEverywhere rename;

		Page(RenameEverywhere rename) {
			super(RenameWizard.class.getName());
			this.rename = rename;
		}

		@Override
		public void createControl(Composite parent) {
			Composite area = new Composite(parent, SWT.NONE);
			GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
			new Label(area, SWT.NONE).setText(Messages.RenameWizard_name);
			Text name = new Text(area, SWT.BORDER);
			Spoken.as(name, Messages.RenameWizard_name);
			GridDataFactory.fillDefaults().grab(true, false).hint(360, SWT.DEFAULT).applyTo(name);
			Label hint = new Label(area, SWT.WRAP);
			hint.setText(Messages.RenameWizard_hint);
			GridDataFactory.fillDefaults().span(2, 1).hint(420, SWT.DEFAULT).applyTo(hint);
			name.setText(rename.before());
			name.selectAll();
			name.addListener(SWT.Modify, e -> check(name.getText().strip()));
			setControl(area);
			setPageComplete(false);
			name.setFocus();
		}

		private void check(String name) {
			RefactoringStatus status = rename.name(name);
			setPageComplete(status);
		}
	}
}
