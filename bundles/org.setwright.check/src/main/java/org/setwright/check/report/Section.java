package org.setwright.check.report;

import java.util.List;

/** A part of the HTML report: what it shows at the top of the page, and below under a heading of its own. */
public interface Section {

	/** A figure at the top. @param value short, for example "87%" @param words what it counts @param alarming whether it needs attention */
	record Figure(String value, String words, boolean alarming) {
	}

	/** @return the heading, a few words; unique on the page */
	String title();

	/** @return the figures for the top of the page; may be empty */
	List<Figure> figures();

	/** Writes what stands under the heading; the section element around it is open. */
	void write(Markup html);
}
