package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Cleans the air in the ducts. */
@About(label = "air cleaner", meaning = "Cleans the air in the ducts by a deep filter or by electricity.", changesOnSite = true)
public record AirCleaner(
		@Asked(label = "kind", meaning = "How it cleans.")
		Answer<Kind> kind,
		@Asked(label = "service interval", meaning = "How long its filter or cells last between changes or washes, as its maker states.", unit = Unit.DAY, least = 14, most = 730)
		Answer<Quantity> serviceInterval,
		@Asked(label = "controlled by", says = "is controlled by the {}", meaning = "Who decides when it runs.", changesOnSite = true)
		Answer<ControlledBy> controlledBy,
		@Asked(label = "powered by", says = "is powered by {}", meaning = "Where it takes its power from.")
		Answer<PoweredBy> poweredBy)
		implements Fact {

	/** How the air is cleaned. */
	public enum Kind implements Choice {
		@Called(label = "media filter", meaning = "A deep pleated filter that is replaced.")
		MEDIA_FILTER,
		@Called(label = "electronic", meaning = "Charged cells that are washed.")
		ELECTRONIC
	}
}
