package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;

/**
 * Words a rule says, with readings between braces: {@code {$rise}}, {@code {$heat.stages}}, {@code {20 F°}},
 * {@code {15..20 F°}}, {@code {setting CHANGEOVER_VALVE}}.
 *
 * @param pieces in the order they are read; not empty
 */
public record Sentence(List<Piece> pieces) {
	public Sentence {
		pieces = List.copyOf(pieces);
	}

	/** A part of a sentence. */
	public sealed interface Piece {
	}

	/** Words as written. */
	public record Words(String words) implements Piece {
	}

	/** The answer of a bound field; what it is, is read on each job. */
	public record Reading(Operand.Bound bound) implements Piece {
	}

	/** A quantity written in the rule, so that it can be shown in other units. @param most empty unless it is a range */
	public record Given(Quantity least, Optional<Quantity> most) implements Piece {
	}

	/** What a setting comes to on the job. No condition: what a rule says never depends on it. */
	public record OfSetting(Setting setting) implements Piece {
	}

	/** @return the bound answers it shows */
	public List<Operand.Bound> readings() {
		List<Operand.Bound> readings = new ArrayList<>();
		for (Piece piece : pieces) {
			if (piece instanceof Reading reading) {
				readings.add(reading.bound());
			}
		}
		return readings;
	}
}
