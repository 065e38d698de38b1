package org.setwright.trade.settings;

import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;

/**
 * How often equipment starts in an hour at half load, where it starts most often. Leaving the controller's own value is
 * a choice of its own, and the usual one.
 */
public enum CycleRate implements Choice {
	@Called(label = "leave at factory value", meaning = "Do not touch it: the controller's own value for this equipment suits it.")
	FACTORY_VALUE,
	@Called(label = "1 per hour", meaning = "One start an hour at half load.")
	ONE_PER_HOUR,
	@Called(label = "2 per hour", meaning = "Two starts an hour at half load.")
	TWO_PER_HOUR,
	@Called(label = "3 per hour", meaning = "Three starts an hour at half load.")
	THREE_PER_HOUR,
	@Called(label = "4 per hour", meaning = "Four starts an hour at half load.")
	FOUR_PER_HOUR,
	@Called(label = "5 per hour", meaning = "Five starts an hour at half load.")
	FIVE_PER_HOUR,
	@Called(label = "6 per hour", meaning = "Six starts an hour at half load.")
	SIX_PER_HOUR,
	@Called(label = "9 per hour", meaning = "Nine starts an hour at half load.")
	NINE_PER_HOUR,
	@Called(label = "12 per hour", meaning = "Twelve starts an hour at half load.")
	TWELVE_PER_HOUR
}
