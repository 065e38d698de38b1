package org.setwright.landing.plan;

import org.setwright.landing.need.Economy;
import org.setwright.landing.need.Need;
import org.setwright.landing.wall.Conductor;

/** A need that does without a conductor of its own and shares {@code conductor}, as a rule of the book allows. */
public record Shared(Need need, Conductor conductor, Economy economy) {
	/** @return what to do and what is lost, a sentence */
	public String sentence() {
		return "No conductor of its own: " + economy.how() + ". What is lost: " + economy.loses() + ".";
	}
}
