package org.setwright.engine.tables;

import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;

/** What a column of a table is for. */
sealed interface Column {
	/** Its cells test a field. */
	record Asks(FactKind kind, Field field) implements Column {
	}

	/** Its cells are values for a setting. */
	record Proposes(Setting setting) implements Column {
	}

	/** Its cells are authorities. */
	record CarriesAuthority() implements Column {
	}

	/** Its cells say why. */
	record GivesReason() implements Column {
	}

	/** Its cells name sources. */
	record NamesSource() implements Column {
	}
}
