package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.choice;

import java.util.List;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Setting;

/** How the controller is fed. */
final class PowerSettings {
	private static final Group POWER = new Group("power and wiring");

	private PowerSettings() {
	}

	static List<Setting> all() {
		return List.of(
				POWER.setting("CONTROLLER_POWER", "controller power",
						"What keeps the controller alive between calls.",
						choice(PowerSource.class), "SitePower( voltage in ( TWENTY_FOUR_VOLT, MILLIVOLT ) )"),
				POWER.setting("SUPPLY_LINK", "R-Rc link",
						"Whether the heating and the cooling supply terminals are joined; joined across two transformers it ties their supplies together.",
						choice(Link.class), "SitePower( voltage == TWENTY_FOUR_VOLT ) Controller( separateSupplies == YES )"),
				POWER.setting("CALLS_GO_TO", "calls go to",
						"Where the controller's calls are landed: at the equipment, or at the zone panel that calls it.",
						choice(CallsGoTo.class), "ZonePanel( )"));
	}

	/** What keeps the controller alive. */
	enum PowerSource implements Choice {
		@Called(label = "common conductor", meaning = "24 V between R and C, all the time.")
		COMMON_CONDUCTOR,
		@Called(label = "batteries", meaning = "Batteries, changed every year before the heating season.")
		BATTERIES
	}

	/** Whether supplies are joined. */
	enum Link implements Choice {
		@Called(label = "fitted", meaning = "One transformer feeds heating and cooling.")
		FITTED,
		@Called(label = "removed", meaning = "Two transformers feed heating and cooling, each on its own terminal.")
		REMOVED
	}

	/** Where calls are landed. */
	enum CallsGoTo implements Choice {
		@Called(label = "equipment", meaning = "The indoor and outdoor units.")
		EQUIPMENT,
		@Called(label = "zone panel", meaning = "The zone panel, which calls the equipment for all zones.")
		ZONE_PANEL
	}
}
