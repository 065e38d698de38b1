package org.setwright.command.reading;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.answer.RuleText;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.engine.explaining.ReadAloud;

/** Rules as they are read aloud, in the order of the book. */
record ReadReport(OpenBook open, List<ReadAloud> rules) implements Report {

	@Override
	public String word() {
		return "read";
	}

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		for (ReadAloud read : rules) {
			page.blank().line(0, Style.STRONG, RuleText.name(read.rule()) + "   [" + read.rule().at() + "]");
			read.sentences().forEach(s -> page.line(2, Style.PLAIN, s));
		}
		if (rules.isEmpty()) {
			page.line(0, Style.PLAIN, "This book has no rules yet.");
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeArrayFieldStart("rules");
		for (ReadAloud read : rules) {
			json.writeStartObject();
			json.writeStringField("rule", read.rule().name());
			json.writeStringField("authority", read.rule().authority().label());
			json.writeStringField("source", read.rule().source());
			json.writeStringField("at", read.rule().at().toString());
			json.writeArrayFieldStart("sentences");
			for (String sentence : read.sentences()) {
				json.writeString(sentence);
			}
			json.writeEndArray();
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("rule", "authority", "source", "at", "words"));
		rules.forEach(r -> rows.add(List.of(r.rule().name(), r.rule().authority().label(), r.rule().source(), r.rule().at().toString(), r.text())));
		return rows;
	}
}
