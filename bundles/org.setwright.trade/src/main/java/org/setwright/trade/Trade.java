package org.setwright.trade;

import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.settings.Settings;

/** The trade's own catalogue: start here to find a fact or a setting. */
public final class Trade {
	private static final Catalogue CATALOGUE = new Catalogue.Builder()
			.facts(OutdoorUnit.class)
			.settings(Settings.all())
			.build();

	private Trade() {
	}

	/** @return every kind of fact and every setting of the trade; always the same immutable object */
	public static Catalogue catalogue() {
		return CATALOGUE;
	}
}
