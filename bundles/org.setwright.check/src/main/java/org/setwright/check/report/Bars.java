package org.setwright.check.report;

import java.util.List;
import org.setwright.check.cases.Standing;

/** A chart of stacked bars, drawn as SVG: one row for each name, what is met, what is not and what is not asked beside each other. */
public final class Bars {
	private static final int LABEL = 230;
	private static final int WIDTH = 900;
	private static final int ROW = 26;
	private static final int BAR = 16;
	private static final int LEAST_ROOM_FOR_NUMBERS = 150;
	private static final int LETTER = 8;
	/** However few are not met, they are seen. */
	private static final int LEAST_SEEN = 6;

	private Bars() {
	}

	/** One row. */
	public record Row(String name, long met, long notMet, long notAsked) {
		private long all() {
			return met + notMet + notAsked;
		}
	}

	/** What the parts of a bar are called. @param notAsked empty when there are only two */
	public record Key(String met, String notMet, String notAsked) {
		/** As the points of job cases stand. */
		public static final Key STANDINGS = new Key(Standing.MET.word(), Standing.NOT_MET.word(), Standing.NOT_ASKED.word());
	}

	/** Writes the chart. @param title what it shows, for those who cannot see it */
	public static void write(Markup html, String title, Key key, List<Row> rows) {
		int height = rows.size() * ROW + 4;
		long longest = Math.max(1, rows.stream().mapToLong(Row::all).max().orElse(1));
		int letters = rows.stream().mapToInt(r -> numbers(key, r).length()).max().orElse(0);
		double unit = (WIDTH - LABEL - Math.max(LEAST_ROOM_FOR_NUMBERS, (letters + 2) * LETTER)) / (double) longest;
		html.open("figure").line();
		html.open("svg", "viewBox", "0 0 " + WIDTH + " " + height, "role", "img", "aria-label", title, "class", "bars").line();
		String hatch = "hatch-" + Integer.toHexString(title.hashCode());
		patterns(html, hatch);
		for (int i = 0; i < rows.size(); i++) {
			row(html, key, rows.get(i), i * ROW + 4, unit, hatch);
		}
		html.close().line().open("figcaption");
		key(html, "met", key.met(), null);
		key(html, "unmet", key.notMet(), hatch);
		if (!key.notAsked().isEmpty()) {
			key(html, "unasked", key.notAsked(), null);
		}
		html.close().close().line();
	}

	/** Hatching tells the parts of a bar apart where colours cannot. */
	private static void patterns(Markup html, String hatch) {
		html.open("defs").open("pattern", "id", hatch, "width", "5", "height", "5", "patternUnits", "userSpaceOnUse", "patternTransform", "rotate(45)")
				.empty("rect", "width", "5", "height", "5", "class", "unmet").empty("rect", "width", "2", "height", "5", "class", "stripe").close().close().line();
	}

	private static void key(Markup html, String style, String word, String hatch) {
		html.open("span", "class", "key").open("svg", "viewBox", "0 0 12 12", "class", "swatch", "aria-hidden", "true")
				.empty("rect", "width", "12", "height", "12", "class", hatch == null ? style : null, "fill", hatch == null ? null : "url(#" + hatch + ")").close().text(" " + word).close();
	}

	private static void row(Markup html, Key key, Row row, int y, double unit, String hatch) {
		html.open("g").element("title", row.name() + ": " + numbers(key, row));
		html.element("text", row.name(), "x", Integer.toString(LABEL - 8), "y", Integer.toString(y + 13), "text-anchor", "end");
		double x = part(html, "met", null, LABEL, y, row.met() * unit);
		x = part(html, null, "url(#" + hatch + ")", x, y, row.notMet() == 0 ? 0 : Math.max(LEAST_SEEN, row.notMet() * unit));
		x = part(html, "unasked", null, x, y, row.notAsked() * unit);
		html.element("text", numbers(key, row), "x", coordinate(x + 8), "y", Integer.toString(y + 13), "class", "number").close().line();
	}

	private static double part(Markup html, String style, String fill, double x, int y, double width) {
		if (width > 0) {
			html.empty("rect", "x", coordinate(x), "y", Integer.toString(y), "width", coordinate(width), "height", Integer.toString(BAR), "class", style, "fill", fill);
		}
		return x + width;
	}

	private static String numbers(Key key, Row row) {
		return row.met() + (row.notMet() > 0 ? " + " + row.notMet() + " " + key.notMet() : "") + " of " + row.all();
	}

	private static String coordinate(double number) {
		return Double.toString(Math.round(number * 10) / 10.0);
	}
}
