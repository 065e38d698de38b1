package org.setwright.trade.wiring;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** A control transformer. */
@About(label = "transformer", plural = "transformers", meaning = "A control transformer that feeds the 24 V circuit or a part of it.", always = true, changesOnSite = true)
public record Transformer(
		@Asked(label = "feeds", says = "feeds {}", meaning = "Which side of the controls it feeds.", naming = true)
		Answer<Feeds> feeds,
		@Asked(label = "rating", meaning = "The volt-amperes on its nameplate.", unit = Unit.VOLT_AMPERE, least = 5, most = 250, changesOnSite = true)
		Answer<Quantity> rating,
		@Asked(label = "measured voltage", meaning = "Its secondary voltage measured under load.", unit = Unit.VOLT, least = 0, most = 60)
		Answer<Quantity> measuredVoltage)
		implements Fact {

	/** Which side of the controls a transformer feeds. */
	public enum Feeds implements Choice {
		@Called(label = "heating and cooling", meaning = "It is the only one, and feeds both.")
		HEATING_AND_COOLING,
		@Called(label = "heating", meaning = "It feeds the heating controls (Rh).")
		HEATING,
		@Called(label = "cooling", meaning = "It feeds the cooling controls (Rc).")
		COOLING,
		@Called(label = "zone panel", meaning = "It feeds the zone panel and its dampers.")
		ZONE_PANEL,
		@Called(label = "accessory", meaning = "It feeds an accessory alone.")
		ACCESSORY
	}
}
