package org.setwright.command;

import java.util.List;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** A small catalogue of its own, so that what these tests expect does not change with the trade's. */
public final class Sample {
	static final Catalogue CATALOGUE = new Catalogue.Builder().facts(Pump.class, SpareHeater.class, Wire.class, House.class)
			.calculated(NightNeed.class, NightNeed::of).calculated(FanNeed.class, FanNeed::of)
			.settings(List.of(
					new Setting("VALVE", "valve", "pump", "In which mode the controller powers the valve.", Domain.Choices.of(Valve.class), "Pump( )"),
					new Setting("SPARE_STAGES", "spare stages", "pump", "How many steps of spare heat are called for.", new Domain.Whole(0, 2), "Pump( )"),
					new Setting("FAN_MINUTES", "fan minutes", "fan", "How long the fan runs in an hour.", new Domain.Measure(Unit.MINUTE, 0, 60), Setting.ALWAYS),
					new Setting("FAN_BY_HEATER", "fan by heater", "fan", "Whether the heater runs the fan itself.", new Domain.YesNo(), "SpareHeater( )"),
					new Setting("COLD_STOP", "cold stop", "limits", "Outdoor temperature below which the pump rests.",
							new Domain.Measure(Unit.FAHRENHEIT, -40, 60), Setting.OPTIONAL),
					new Setting("DOOR_SIGN", "door sign", "limits", "What is written on the door.", new Domain.Words(), Setting.OPTIONAL)))
			.build();

	private Sample() {
	}

	/** A kind a job has at most one of. */
	@About(label = "pump", meaning = "The machine that moves heat.")
	public record Pump(@Asked(label = "kind", meaning = "Where it takes heat from.") Answer<Kind> kind,
			@Asked(label = "maker", meaning = "Who made it.") Answer<String> maker,
			@Asked(label = "stages", meaning = "How many steps it has.", least = 1, most = 2) Answer<Integer> stages) implements Fact {
		/** Where a pump takes heat from. */
		public enum Kind implements Choice {
			@Called(label = "from air", meaning = "It takes heat from outdoor air.")
			FROM_AIR,
			@Called(label = "from the ground", meaning = "It takes heat from a ground loop.")
			FROM_THE_GROUND
		}
	}

	/** A kind whose presence other things need. */
	@About(label = "spare heater", meaning = "What heats when the pump cannot.")
	public record SpareHeater(@Asked(label = "stages", meaning = "How many steps it has.", least = 1, most = 2) Answer<Integer> stages,
			@Asked(label = "runs fan", says = "runs the fan|does not run the fan", meaning = "Whether it starts the fan itself.") Answer<Boolean> runsFan) implements Fact {
	}

	/** A kind a job may have several of. */
	@About(label = "wire", plural = "wires", meaning = "A conductor at the wall.")
	public record Wire(@Asked(label = "colour", meaning = "The colour of its insulation.", naming = true) Answer<String> colour,
			@Asked(label = "voltage", meaning = "What was measured on it.", unit = Unit.VOLT, most = 600) Answer<Quantity> voltage) implements Fact {
	}

	/** A kind every job has. */
	@About(label = "house", always = true, meaning = "The building.")
	public record House(@Asked(label = "floor area", meaning = "Heated floor area.", unit = Unit.SQUARE_FOOT, most = 20000) Answer<Quantity> floorArea,
			@Asked(label = "coldest night", meaning = "The design temperature.", unit = Unit.FAHRENHEIT, least = -40, most = 60) Answer<Quantity> coldestNight)
			implements Fact {
	}

	/** Worked out from what is stated. */
	@About(label = "night need", always = true, meaning = "What the coldest night asks for.")
	public record NightNeed(@Calculated(from = "House.coldestNight", formula = "65 °F less the coldest night", source = "common practice")
			@Asked(label = "degrees", meaning = "How far it is below 65 °F.", unit = Unit.FAHRENHEIT_DEGREES, most = 200) Answer<Quantity> degrees)
			implements Fact {
		static NightNeed of(Job job) {
			return new NightNeed(job.one(House.class).map(House::coldestNight).orElse(Answer.unknown())
					.map(q -> new Quantity(Math.rint(65 - q.in(Unit.FAHRENHEIT)), Unit.FAHRENHEIT_DEGREES)));
		}
	}

	/** Worked out by way of something that is itself worked out. */
	@About(label = "fan need", always = true, meaning = "Whether the fan should run on.")
	public record FanNeed(@Calculated(from = "House.coldestNight", through = "NightNeed.degrees", formula = "whether the night need is above 60 F°",
			source = "common practice")
			@Asked(label = "runs on", says = "asks for the fan to run on|lets the fan rest", meaning = "Whether the fan should run on.") Answer<Boolean> runsOn)
			implements Fact {
		static FanNeed of(Job job) {
			return new FanNeed(NightNeed.of(job).degrees().map(q -> q.number() > 60));
		}
	}

	/** In which mode the valve is powered. */
	public enum Valve implements Choice {
		@Called(label = "powered in cooling", meaning = "Powered while cooling.")
		POWERED_IN_COOLING,
		@Called(label = "powered in heating", meaning = "Powered while heating.")
		POWERED_IN_HEATING
	}
}
