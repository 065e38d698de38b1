package org.setwright.engine.language;

import org.setwright.book.Position;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;

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
}
