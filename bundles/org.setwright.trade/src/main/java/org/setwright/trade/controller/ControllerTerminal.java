package org.setwright.trade.controller;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.wiring.TerminalMark;

/** A terminal the new controller offers. */
@About(label = "controller terminal", plural = "controller terminals", meaning = "A terminal the new controller offers.", always = true, changesOnSite = true)
public record ControllerTerminal(
		@Asked(label = "mark", says = "is marked {}", meaning = "The letters beside it.", naming = true, changesOnSite = true)
		Answer<TerminalMark> mark)
		implements Fact {
}
