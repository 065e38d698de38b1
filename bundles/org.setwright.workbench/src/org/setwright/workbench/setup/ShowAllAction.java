package org.setwright.workbench.setup;

import java.util.function.Consumer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.setwright.workbench.look.Icon;

/** Switches between the settings this job needs and all there are. */
final class ShowAllAction extends Action {
	private final Consumer<Boolean> wanted;

	ShowAllAction(Consumer<Boolean> wanted) {
		super(Messages.ShowAllAction_text, IAction.AS_CHECK_BOX);
		this.wanted = wanted;
		setToolTipText(Messages.ShowAllAction_text);
		setImageDescriptor(Icon.NOT_NEEDED.descriptor());
	}

	@Override
	public void run() {
		wanted.accept(isChecked());
	}
}
