package org.setwright.trade.wiring;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** One conductor that reaches the wall where the controller goes. Its colour is a custom and proves nothing. */
@About(label = "wire", plural = "wires", meaning = "One conductor that reaches the wall where the controller goes.", always = true, changesOnSite = true)
public record Wire(
		@Asked(label = "colour", says = "is {}", meaning = "The colour of its insulation, which never proves what it does.", naming = true)
		Answer<Colour> colour,
		@Asked(label = "at control", says = "lands on {} at the control", meaning = "Where it was landed on the old control.")
		Answer<TerminalMark> atControl,
		@Asked(label = "at equipment", says = "lands on {} at the equipment", meaning = "Where its other end is landed at the equipment.", changesOnSite = true)
		Answer<TerminalMark> atEquipment,
		@Asked(label = "gauge", meaning = "Its thickness; a thick one may carry line voltage.", unit = Unit.AWG, least = 10, most = 26)
		Answer<Quantity> gauge,
		@Asked(label = "length", meaning = "Its length one way, from the wall to the equipment.", unit = Unit.FOOT, least = 1, most = 500)
		Answer<Quantity> length,
		@Asked(label = "condition", says = "is {}", meaning = "Whether it is fit to be used.", changesOnSite = true)
		Answer<Condition> condition)
		implements Fact {

	/** The colour of the insulation. */
	public enum Colour implements Choice {
		@Called(label = "red", meaning = "By custom the 24 V supply.")
		RED,
		@Called(label = "white", meaning = "By custom heat; beside a heat pump auxiliary heat.")
		WHITE,
		@Called(label = "yellow", meaning = "By custom the compressor.")
		YELLOW,
		@Called(label = "green", meaning = "By custom the indoor fan.")
		GREEN,
		@Called(label = "blue", meaning = "By custom the common, with some makers the changeover valve.")
		BLUE,
		@Called(label = "light blue", meaning = "By custom the compressor's second step.")
		LIGHT_BLUE,
		@Called(label = "orange", meaning = "By custom the changeover valve.")
		ORANGE,
		@Called(label = "brown", meaning = "By custom a second step of heat or emergency heat.")
		BROWN,
		@Called(label = "black", meaning = "By custom the common or a spare; in a thick cable a line conductor.")
		BLACK,
		@Called(label = "purple", meaning = "No custom.")
		PURPLE,
		@Called(label = "pink", meaning = "No custom.")
		PINK,
		@Called(label = "tan", meaning = "No custom.")
		TAN,
		@Called(label = "grey", meaning = "No custom.")
		GREY,
		@Called(label = "other", meaning = "Another colour, bare or unreadable.")
		OTHER
	}

	/** Whether a conductor is fit to be used. */
	public enum Condition implements Choice {
		@Called(label = "sound", meaning = "Rung out from end to end and clear of the others.")
		SOUND,
		@Called(label = "broken", meaning = "Open somewhere between its ends.")
		BROKEN,
		@Called(label = "shorted", meaning = "Touching another conductor or earth.")
		SHORTED
	}
}
