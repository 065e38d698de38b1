package org.setwright.book;

import java.util.List;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/**
 * A small catalogue of an invented trade, so that the tests of reading and writing hold whatever the real catalogue
 * says: one kind of every sort and one field of every domain.
 */
public final class Sample {
	static final Catalogue CATALOGUE = new Catalogue.Builder().facts(Pump.class, Lamp.class, Wire.class, House.class, Tank.class)
			.calculated(Totals.class, job -> new Totals(Answer.of(job.all(Wire.class).size())))
			.settings(List.of(new Setting("PUMP_SPEED", "pump speed", "pump", "How fast it turns.", new Domain.Whole(0, 3), Setting.OPTIONAL),
					new Setting("LAMP_MODE", "lamp mode", "lamp", "When it shines.", Domain.Choices.of(Colour.class), Setting.ALWAYS),
					new Setting("ALARM_LIMIT", "alarm limit", "tank", "When it rings.", new Domain.Measure(Unit.FAHRENHEIT, 30, 90), Setting.OPTIONAL)))
			.build();

	private Sample() {
	}

	/** A kind a job has at most one of, with a field of every domain. */
	@About(label = "pump", meaning = "Moves water.")
	public record Pump(@Asked(label = "kind", meaning = "Its sort.") Answer<PumpKind> kind,
			@Asked(label = "maker", meaning = "Who made it.") Answer<String> maker,
			@Asked(label = "stages", meaning = "Its steps.", least = 1, most = 4) Answer<Integer> stages,
			@Asked(label = "running heat", meaning = "Its output.", unit = Unit.BTU_PER_HOUR, least = 1000, most = 90000) Answer<Quantity> runningHeat,
			@Asked(label = "own fuse", meaning = "Whether it has one.") Answer<Boolean> ownFuse,
			@Asked(label = "ratio", meaning = "A plain number.", least = 0, most = 9) Answer<Quantity> ratio) implements Fact {
	}

	/** A second kind that may be absent. */
	@About(label = "lamp", meaning = "Shines.")
	public record Lamp(@Asked(label = "colour", meaning = "Its colour.") Answer<Colour> colour) implements Fact {
	}

	/** A kind a job may have several of, named by its colour. */
	@About(label = "wire", plural = "wires", meaning = "A conductor.")
	public record Wire(@Asked(label = "colour", meaning = "Of its jacket.", naming = true) Answer<Colour> colour,
			@Asked(label = "gauge", meaning = "Its size.", unit = Unit.AWG, least = 10, most = 24) Answer<Quantity> gauge,
			@Asked(label = "lands at", meaning = "Its terminal.") Answer<String> landsAt) implements Fact {
	}

	/** A kind every job has, with a calculated field. */
	@About(label = "house", meaning = "Where it stands.", always = true)
	public record House(
			@Asked(label = "floor area", meaning = "Of heated rooms.", unit = Unit.SQUARE_FOOT, least = 100, most = 20000) Answer<Quantity> floorArea,
			@Asked(label = "coldest night", meaning = "Design temperature.", unit = Unit.FAHRENHEIT, least = -60, most = 60) Answer<Quantity> coldestNight,
			@Calculated(from = "House.floorArea", formula = "floor area halved", source = "common practice") @Asked(label = "half area", meaning = "Half.", unit = Unit.SQUARE_FOOT, most = 20000) Answer<Quantity> halfArea)
			implements Fact {
	}

	/** A kind a job may have several of, without a naming field. */
	@About(label = "tank", plural = "tanks", meaning = "Holds water.")
	public record Tank(@Asked(label = "height", meaning = "Of the shell.", unit = Unit.FOOT, least = 1, most = 20) Answer<Quantity> height) implements Fact {
	}

	/** A calculated kind. */
	@About(label = "totals", meaning = "Counts.")
	public record Totals(@Calculated(from = "Wire.colour", formula = "wires counted", source = "common practice") @Asked(label = "wire count", meaning = "How many.") Answer<Integer> wireCount)
			implements Fact {
	}

	/** Sorts of pump. */
	public enum PumpKind implements Choice {
		WATER_LIFTING_PUMP("water-lifting pump"), AIR_DRIVEN_PUMP("air-driven pump");

		private final String label;

		PumpKind(String label) {
			this.label = label;
		}

		@Override
		public String label() {
			return label;
		}

		@Override
		public String meaning() {
			return label;
		}
	}

	/** Colours. */
	public enum Colour implements Choice {
		RED, ORANGE, BLUE;

		@Override
		public String label() {
			return name().toLowerCase(java.util.Locale.ROOT);
		}

		@Override
		public String meaning() {
			return label();
		}
	}
}
