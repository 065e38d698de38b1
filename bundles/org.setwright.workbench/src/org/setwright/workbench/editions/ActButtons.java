package org.setwright.workbench.editions;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.editions.EditionsView.Act;

/** What can be done, as buttons and in menus. */
final class ActButtons {
	private final Composite row;

	ActButtons(Composite parent, Consumer<Act> does) {
		row = new Composite(parent, SWT.NONE);
		row.setLayout(new RowLayout());
		for (Act act : Act.values()) {
			Button button = new Button(row, SWT.PUSH);
			button.setText(label(act));
			button.addListener(SWT.Selection, e -> does.accept(act));
		}
	}

	Composite control() {
		return row;
	}

	/** @return the same for a menu */
	static List<IAction> actions(Consumer<Act> does) {
		return Arrays.stream(Act.values()).<IAction>map(act -> new Action(label(act)) {
			@Override
			public void run() {
				does.accept(act);
			}
		}).toList();
	}

	private static String label(Act act) {
		return switch (act) {
			case KEEP -> Messages.ActButtons_keep;
			case PUT_BACK_RULE -> Messages.ActButtons_putBackRule;
			case PUT_BACK_BOOK -> Messages.ActButtons_putBackBook;
			case REMARK -> Messages.ActButtons_remark;
			case SIGN -> Messages.ActButtons_sign;
		};
	}
}
