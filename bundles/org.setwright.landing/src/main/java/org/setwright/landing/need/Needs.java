package org.setwright.landing.need;

import java.util.List;
import java.util.stream.Stream;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.wiring.SitePower;

/** Every conductor a job needs, the most important first. */
public final class Needs {
	private Needs() {
	}

	/** @return the needs of a job without a hard stop */
	public static List<Need> of(Outcome outcome) {
		SetUp setUp = new SetUp(outcome);
		boolean millivolt = setUp.one(SitePower.class).flatMap(p -> p.voltage().value()).filter(v -> v == SitePower.Voltage.MILLIVOLT).isPresent();
		Stream<List<Need>> all = millivolt ? Stream.of(SupplyNeeds.thermopile(setUp), SensorNeeds.of(setUp))
				: Stream.of(SupplyNeeds.of(setUp), CallNeeds.of(setUp), AccessoryNeeds.of(setUp), SensorNeeds.of(setUp));
		Stream<Need> needs = all.flatMap(List::stream);
		return setUp.open("CALLS_GO_TO").filter(open -> setUp.has(ZonePanel.class)).map(open -> needs.map(n -> n.heldOpenBy(open))).orElse(needs).sorted(Need.ORDER).toList();
	}
}
