package org.setwright.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.need.SupplyNeeds;
import org.setwright.landing.plan.Warning;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.wiring.SitePower;
import org.setwright.trade.wiring.SitePower.Voltage;
import org.setwright.trade.wiring.Transformer;

/** What forbids any landing. These do not depend on the rule book: they hold in every shop. */
final class Stops {
	private static final String LINE_SOURCE = "common practice; NFPA 70 and 29 CFR 1910.147 for switching off and locking out, recalled from memory";
	private static final String CLASS_2_SOURCE = "NFPA 70, chapter 9, table 11(A): class 2 circuits up to 30 V, recalled from memory";
	private static final double MOST_VOLTS = 30;

	private final SetUp setUp;
	private final List<Warning> stops = new ArrayList<>();

	private Stops(SetUp setUp) {
		this.setUp = setUp;
	}

	static List<Warning> of(SetUp setUp) {
		Stops stops = new Stops(setUp);
		stops.voltage(setUp.one(SitePower.class).flatMap(p -> p.voltage().value()));
		stops.measured();
		stops.twoSupplies();
		return stops.stops;
	}

	private void voltage(Optional<Voltage> voltage) {
		if (voltage.isEmpty()) {
			stop("Nobody has said what voltage is at the wall: let a qualified person measure before any conductor is touched, and enter it.", LINE_SOURCE);
			return;
		}
		switch (voltage.get()) {
			case LINE_VOLTAGE -> stop("Line voltage at the wall: land nothing on a low-voltage controller. A licensed electrician has to switch off, lock out, prove dead and fit a control rated for the load.", LINE_SOURCE);
			case MAKERS_DATA_LINE -> stop("The conductors are the equipment maker's data line, not 24 V calls: keep that maker's controller, or ask the maker how plain 24 V calls are wired.", SetUp.COMMON_PRACTICE);
			case MILLIVOLT -> millivolt();
			case TWENTY_FOUR_VOLT -> {
			}
		}
	}

	private void millivolt() {
		Optional<Controller> controller = setUp.one(Controller.class);
		if (controller.flatMap(c -> c.ratedFor().value()).filter(r -> r != Controller.RatedFor.TWENTY_FOUR_VOLT_AND_MILLIVOLT).isPresent()) {
			stop("The heater makes its own millivolts and this controller is not rated for that: take one whose maker allows it.", "sheet of the controller, as entered in the job");
		}
		if (controller.flatMap(c -> c.power().value()).filter(p -> p == Controller.Power.COMMON_CONDUCTOR).isPresent()) {
			stop("The controller needs 24 V, and no outside power may be brought to a millivolt gas valve: take a battery controller rated for millivolt circuits.", SetUp.COMMON_PRACTICE);
		}
	}

	private void measured() {
		boolean tooMuch = setUp.job().all(Transformer.class).stream()
				.anyMatch(t -> t.measuredVoltage().value().filter(v -> v.in(Unit.VOLT) > MOST_VOLTS).isPresent());
		if (tooMuch) {
			stop("More than 30 V was measured on a control transformer: switch off, find out which supplies are tied together, and plan again at about 24 V.", CLASS_2_SOURCE);
		}
	}

	private void twoSupplies() {
		if (!SupplyNeeds.twoSupplies(setUp)) {
			return;
		}
		if (setUp.word("SUPPLY_LINK").filter("FITTED"::equals).isPresent()) {
			stop("Two transformers, and the set-up leaves the R-Rc link in: it would tie two supplies together. Take the link out first.", SetUp.COMMON_PRACTICE);
		}
		if (setUp.one(Controller.class).flatMap(c -> c.separateSupplies().value()).filter(separate -> !separate).isPresent()) {
			stop("Two transformers and a controller with one supply terminal: take a controller with Rh and Rc, or let a qualified person put an isolating relay between.", SetUp.COMMON_PRACTICE);
		}
	}

	private void stop(String sentence, String source) {
		stops.add(new Warning(CautionKind.STOP, sentence, source));
	}
}
