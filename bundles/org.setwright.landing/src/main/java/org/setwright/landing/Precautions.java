package org.setwright.landing;

import java.util.ArrayList;
import java.util.List;
import org.setwright.engine.outcome.Caution;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.Warning;
import org.setwright.trade.catalogue.CautionKind;

/** What to heed while landing conductors, on every job, and the hard stops of the shop's own rules. */
final class Precautions {
	private static final String LOCKING_OUT = "common practice; 29 CFR 1910.147, recalled from memory";
	private static final List<Warning> ALWAYS = List.of(
			new Warning(CautionKind.DANGER, "Switch off indoor and outdoor unit at their breakers, lock them out, and prove the conductors dead with a tester that you have just seen working, before touching any.", LOCKING_OUT),
			new Warning(CautionKind.LICENSED_WORK, "Line voltage, wherever it turns up behind the wall or inside the equipment, is for a licensed electrician under the local electrical code; gas work is for a licensed gas fitter.", "common practice; NFPA 70 and NFPA 54, recalled from memory"),
			new Warning(CautionKind.CHECK_AT_START_UP, "Before the controller goes on its base, measure about 24 V between R and C and nothing between R and bare metal; then make each call and see that only what was called for runs.", SetUp.COMMON_PRACTICE),
			new Warning(CautionKind.NOTE, "Local codes and the makers' diagrams come before this plan. Photograph both ends and tag every conductor before the old control comes off.", SetUp.COMMON_PRACTICE));

	private Precautions() {
	}

	static List<Warning> of(SetUp setUp) {
		List<Warning> all = new ArrayList<>();
		setUp.outcome().cautions().stream().filter(c -> c.kind() == CautionKind.STOP).forEach(c -> all.add(warning(c)));
		all.addAll(ALWAYS);
		return all;
	}

	private static Warning warning(Caution caution) {
		return new Warning(caution.kind(), caution.sentence(), SetUp.source(caution.raisedBy().get(0).rule()));
	}
}
