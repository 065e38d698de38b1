package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;

/** What a rule says when its conditions hold. */
public sealed interface Action {
	/** Where it begins. */
	Position at();

	/** {@code propose( SETTING, value )}. */
	record Propose(Setting setting, Operand value, Position at) implements Action {
	}

	/** {@code find( NAME )}. */
	record Find(String finding, Position at) implements Action {
	}

	/** {@code caution( KIND, "sentence" )}. */
	record Warn(CautionKind kind, String sentence, Position at) implements Action {
	}

	/**
	 * {@code startUp( PHASE, "call for", "see", "if not" )}, with what to wait for as a fifth text where there is any.
	 *
	 * @param callFor what to do, at the controller or with a jumper
	 * @param see what to see, hear or measure
	 * @param ifNot what it means when that does not happen, and what to do
	 */
	record StartUp(StartUpPhase phase, Sentence callFor, Sentence see, Sentence ifNot, Optional<Sentence> pause, Position at)
			implements Action {
		/** @return the bound answers its texts show; they may be unknown */
		public List<Operand.Bound> readings() {
			List<Operand.Bound> readings = new ArrayList<>(callFor.readings());
			readings.addAll(see.readings());
			readings.addAll(ifNot.readings());
			pause.ifPresent(p -> readings.addAll(p.readings()));
			return readings;
		}
	}
}
