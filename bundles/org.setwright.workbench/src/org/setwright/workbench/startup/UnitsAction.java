package org.setwright.workbench.startup;

import java.util.function.Consumer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.setwright.trade.catalogue.UnitSystem;

/** Chooses in which units quantities are shown. */
final class UnitsAction extends Action {
	private final UnitSystem units;
	private final Consumer<UnitSystem> chosen;

	UnitsAction(UnitSystem units, Consumer<UnitSystem> chosen) {
		super(switch (units) {
			case IP -> Messages.UnitsAction_ip;
			case SI -> Messages.UnitsAction_si;
			case BOTH -> Messages.UnitsAction_both;
		}, IAction.AS_RADIO_BUTTON);
		this.units = units;
		this.chosen = chosen;
	}

	@Override
	public void run() {
		if (isChecked()) {
			chosen.accept(units);
		}
	}
}
