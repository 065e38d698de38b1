package org.setwright.check.report;

/** Plain tables of the report. */
final class Tables {
	private Tables() {
	}

	static void begin(Markup html, String... heads) {
		html.open("table").line().open("thead").open("tr");
		for (String head : heads) {
			html.element("th", head, "scope", "col");
		}
		html.close().close().line().open("tbody").line();
	}

	static void row(Markup html, String... cells) {
		html.open("tr");
		for (String cell : cells) {
			html.element("td", cell);
		}
		html.close().line();
	}

	static void end(Markup html) {
		html.close().close().line();
	}
}
