package org.setwright.trade.equipment;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** The compressor section: outdoors, or indoors with a ground loop. */
@About(label = "outdoor unit", meaning = "The machine with the compressor: an air conditioner or a heat pump.")
public record OutdoorUnit(
		@Asked(label = "kind", meaning = "What the machine does: cool only, or pump heat both ways.") Answer<Kind> kind,
		@Asked(label = "maker", meaning = "Who made it, as on the nameplate.") Answer<String> maker,
		@Asked(label = "stages", meaning = "How many steps of compressor capacity the controller has to call for.", least = 1, most = 2) Answer<Integer> stages,
		@Asked(label = "valve energised in", meaning = "In which mode the maker's diagram shows the changeover valve powered.") Answer<ValveSense> valveEnergisedIn,
		@Asked(label = "heating capacity at 47 °F", meaning = "Rated heat output at 47 °F (8.3 °C) outdoors.", unit = Unit.BTU_PER_HOUR, least = 5000, most = 130000) Answer<Quantity> heatingCapacityAt47F)
		implements Fact {

	/** What the machine does. */
	public enum Kind implements Choice {
		AIR_CONDITIONER("air conditioner", "Cools only."),
		AIR_SOURCE_HEAT_PUMP("air-source heat pump", "Heats and cools, taking heat from outdoor air."),
		GROUND_SOURCE_HEAT_PUMP("ground-source heat pump", "Heats and cools, taking heat from a ground loop.");

		private final String label;
		private final String meaning;

		Kind(String label, String meaning) {
			this.label = label;
			this.meaning = meaning;
		}

		@Override
		public String label() {
			return label;
		}

		@Override
		public String meaning() {
			return meaning;
		}
	}

	/** In which mode the changeover valve is powered. */
	public enum ValveSense implements Choice {
		COOLING("cooling", "The valve is powered while cooling (terminal O)."),
		HEATING("heating", "The valve is powered while heating (terminal B).");

		private final String label;
		private final String meaning;

		ValveSense(String label, String meaning) {
			this.label = label;
			this.meaning = meaning;
		}

		@Override
		public String label() {
			return label;
		}

		@Override
		public String meaning() {
			return meaning;
		}
	}
}
