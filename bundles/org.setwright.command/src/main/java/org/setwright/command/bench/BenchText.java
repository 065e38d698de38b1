package org.setwright.command.bench;

import java.util.List;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Tone;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** Lays out what the bench tells: every answer stands indented below its line. */
record BenchText(Page page) {
	/** Stands before a line. */
	static final String SAY = "say ";
	/** Stands before each further line of a rule. */
	static final String MORE = "and ";
	private static final int INDENT = SAY.length();
	private static final String HERE = "here: ";

	/** Shows a line as it was typed. */
	void line(String typed) {
		String prompt = SAY;
		for (String one : typed.lines().toList()) {
			page.verbatim(0, Style.STRONG, prompt + one);
			prompt = MORE;
		}
	}

	/** Shows what was told of a line. */
	void answer(Exchange exchange) {
		rows(exchange.rows());
		exchange.misread().ifPresent(m -> misread(m, exchange.line()));
		if (!exchange.refused().isEmpty()) {
			page.line(INDENT, Style.ALARM, exchange.refused());
		}
	}

	void rows(List<Row> rows) {
		for (Row row : rows) {
			page.line(INDENT + 2 * row.depth(), style(row.tone()), row.words() + row.place());
		}
	}

	/** Points at the place in the line; a line of several is shown again. */
	private void misread(Misread why, String typed) {
		int line = why.line(typed);
		if (typed.indexOf('\n') >= 0) {
			page.verbatim(0, Style.QUIET, " ".repeat(INDENT) + typed.lines().skip(line - 1L).findFirst().orElse(""));
		}
		int at = INDENT + why.column(typed) - 1;
		page.line(at > page.width() / 2 ? INDENT : at, Style.ALARM, HERE + why.what());
		page.line(INDENT, Style.PLAIN, why.remedy());
	}

	private static Style style(Tone tone) {
		return switch (tone) {
			case PLAIN -> Style.PLAIN;
			case HEADING -> Style.STRONG;
			case QUIET -> Style.QUIET;
			case GOOD -> Style.GOOD;
			case ATTENTION -> Style.ATTENTION;
			case ALARM -> Style.ALARM;
		};
	}
}
