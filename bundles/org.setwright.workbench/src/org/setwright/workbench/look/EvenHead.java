package org.setwright.workbench.look;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** The head of a dialog in one colour: the style sheet gives its ground one, and the platform its words another. */
public final class EvenHead {
	private EvenHead() {
	}

	/** A dialog with such a head. */
	public abstract static class Dialog extends TitleAreaDialog {
		/** @param shell above which it opens */
		protected Dialog(Shell shell) {
			super(shell);
		}

		@Override
		protected Control createContents(Composite parent) {
			Control contents = super.createContents(parent);
			even(getTitleImageLabel());
			return contents;
		}
	}

	/** A wizard with such a head. */
	public static final class Wizard extends WizardDialog {
		/** @param shell above which it opens */
		public Wizard(Shell shell, IWizard wizard) {
			super(shell, wizard);
		}

		@Override
		protected Control createContents(Composite parent) {
			Control contents = super.createContents(parent);
			even(getTitleImageLabel());
			return contents;
		}
	}

	/** The platform colours the words anew with every message, so they are seen to whenever the head is painted. */
	private static void even(Label image) {
		Composite head = image.getParent();
		head.addListener(SWT.Paint, e -> {
			for (Control part : head.getChildren()) {
				if (!part.getBackground().equals(head.getBackground())) {
					part.setBackground(head.getBackground());
				}
			}
		});
	}
}
