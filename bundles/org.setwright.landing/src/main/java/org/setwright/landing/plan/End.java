package org.setwright.landing.plan;

import java.util.Optional;
import org.setwright.trade.wiring.EquipmentTerminal.Machine;
import org.setwright.trade.wiring.TerminalMark;

/**
 * One end of a conductor.
 *
 * @param from where it is landed now; empty when nobody has said
 * @param to where to land it; empty when it is left as it is
 * @param machine which machine the terminal is on; empty at the wall, or when nobody has said
 */
public record End(Optional<TerminalMark> from, Optional<TerminalMark> to, Optional<Machine> machine) {

	/** @return whether it is known to stay on the terminal it is on */
	public boolean stays() {
		return to.isEmpty() || from.equals(to);
	}

	/** @return for people: "Y", "W -> Aux", "spare -> C", "? -> Y", "left as it is" */
	public String text() {
		String now = from.map(mark -> mark == TerminalMark.NOT_LANDED ? "spare" : mark.label()).orElse("?");
		return to.isEmpty() ? "left as it is" : stays() ? now : now + " \u2192 " + to.get().label();
	}
}
