package org.setwright.landing.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.landing.need.Need.Strength;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.wiring.Transformer;
import org.setwright.trade.wiring.Transformer.Feeds;

/** What feeds the controller. */
public final class SupplyNeeds {
	private static final String LINK = "SUPPLY_LINK";
	private static final String POWER = "CONTROLLER_POWER";

	private static final Check LINK_OUT = Check.of("Take the link between Rh and Rc out, and see which R belongs to which transformer.");

	private SupplyNeeds() {
	}

	/** @return whether heating and cooling have a transformer each that both reach the controller */
	public static boolean twoSupplies(SetUp setUp) {
		return feeds(setUp, Feeds.HEATING) && feeds(setUp, Feeds.COOLING) && !setUp.has(ZonePanel.class);
	}

	static List<Need> of(SetUp setUp) {
		List<Need> needs = new ArrayList<>();
		if (twoSupplies(setUp)) {
			needs.add(setUp.grounded(Need.of(Duty.HEATING_SUPPLY, Strength.NEEDED, "A transformer of its own feeds heating, on Rh.").checking(LINK_OUT), LINK));
			needs.add(setUp.grounded(Need.of(Duty.COOLING_SUPPLY, Strength.NEEDED, "A transformer of its own feeds cooling, on Rc.").checking(LINK_OUT), LINK));
		} else {
			boolean linked = setUp.word(LINK).filter("FITTED"::equals).isPresent() && separate(setUp);
			needs.add(setUp.grounded(counted(setUp, Need.of(Duty.SUPPLY, Strength.NEEDED, linked ? "Every call starts from the transformer's 24 V; the link between R and Rc carries it to both."
					: "Every call starts from the transformer's 24 V.")), LINK));
		}
		common(setUp).ifPresent(needs::add);
		return needs;
	}

	static List<Need> thermopile(SetUp setUp) {
		Need need = Need.of(Duty.SWITCH, Strength.NEEDED, "The controller closes the thermopile's own circuit, out and back.");
		boolean rated = setUp.one(Controller.class).filter(c -> c.ratedFor().isKnown()).isPresent();
		return (rated ? need : need.checking(new Check("Find out whether the controller's maker allows it on a millivolt circuit; most are not.",
				setUp.place(Controller.class, 0, "ratedFor")))).parts(2);
	}

	/** As long as a second transformer is possible, nobody may take the supply for granted. */
	private static Need counted(SetUp setUp, Need supply) {
		List<Transformer> all = setUp.job().all(Transformer.class);
		boolean counted = setUp.job().entry(Transformer.class).presence() != Presence.UNKNOWN && all.stream().allMatch(t -> t.feeds().isKnown());
		return counted ? supply : supply.checking(new Check("Count the transformers: with one each for heating and cooling, this plan does not hold.",
				all.isEmpty() ? Optional.empty() : setUp.place(Transformer.class, 0, "feeds")));
	}

	private static boolean separate(SetUp setUp) {
		return setUp.one(Controller.class).flatMap(c -> c.separateSupplies().value()).filter(yes -> yes).isPresent();
	}

	private static boolean feeds(SetUp setUp, Feeds side) {
		return setUp.job().all(Transformer.class).stream().anyMatch(t -> t.feeds().value().filter(f -> f == side).isPresent());
	}

	private static Optional<Need> common(SetUp setUp) {
		Optional<Controller.Power> power = setUp.one(Controller.class).flatMap(c -> c.power().value());
		Optional<String> settled = setUp.word(POWER);
		if (settled.filter("BATTERIES"::equals).isPresent() || settled.isEmpty() && power.filter(p -> p == Controller.Power.BATTERIES).isPresent()) {
			return Optional.empty();
		}
		if (settled.isPresent()) {
			return Optional.of(withTransformer(setUp, setUp.grounded(Need.of(Duty.COMMON, Strength.NEEDED, "The common keeps the controller alive between calls."), POWER)));
		}
		if (power.filter(p -> p == Controller.Power.COMMON_CONDUCTOR).isPresent()) {
			Need need = Need.of(Duty.COMMON, Strength.NEEDED, "The controller's maker asks for 24 V between R and C at all times.");
			return Optional.of(withTransformer(setUp, new Need(need.duty(), 1, 1, need.strength(), need.because(),
					"sheet of the controller, as entered in the job", List.of(), List.of(), List.of())));
		}
		return Optional.of(withTransformer(setUp, setUp.grounded(
				Need.of(Duty.COMMON, Strength.OPEN, "Nobody has settled whether the controller is fed by a common."), POWER)));
	}

	private static Need withTransformer(SetUp setUp, Need common) {
		return twoSupplies(setUp)
				? common.checking(Check.of("Take the common from the transformer that feeds the controller's electronics, and from no other."))
				: common;
	}
}
