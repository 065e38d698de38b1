package org.setwright.command.startup;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.setwright.command.answer.Problems;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Line;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.UnitSystem;

/** The start-up checks of one job as JSON; OUTPUT.md describes it. */
record StartupJson(JsonGenerator json, UnitSystem units) {

	void write(Outcome outcome) throws IOException {
		json.writeArrayFieldStart("cautions");
		for (Caution caution : StartupText.grave(outcome)) {
			json.writeStartObject();
			json.writeStringField("kind", caution.kind().label());
			json.writeStringField("sentence", caution.sentence());
			json.writeEndObject();
		}
		json.writeEndArray();
		json.writeArrayFieldStart("checks");
		int number = 1;
		for (StartUpCheck check : outcome.startUp()) {
			write(check, number++);
		}
		json.writeEndArray();
	}

	private void write(StartUpCheck check, int number) throws IOException {
		json.writeStartObject();
		json.writeNumberField("number", number);
		json.writeStringField("phase", check.phase().label());
		json.writeBooleanField("certain", check.certain());
		line("callFor", Optional.of(check.callFor()));
		line("see", Optional.of(check.see()));
		line("ifNot", Optional.of(check.ifNot()));
		line("wait", check.pause());
		strings("undecided", check.undecided().stream().map(Setting::id).toList());
		strings("toFindOut", check.toFindOut().stream().map(JobField::label).sorted().toList());
		json.writeArrayFieldStart("rules");
		for (Rule rule : check.saidBy()) {
			json.writeStartObject();
			json.writeStringField("rule", rule.name());
			json.writeStringField("authority", rule.authority().label());
			json.writeStringField("because", rule.because());
			json.writeStringField("source", rule.source());
			Problems.at(json, rule.at());
			json.writeEndObject();
		}
		json.writeEndArray();
		json.writeEndObject();
	}

	private void line(String field, Optional<Line> line) throws IOException {
		if (line.isPresent()) {
			json.writeStringField(field, line.get().text(units));
		}
	}

	private void strings(String field, List<String> strings) throws IOException {
		json.writeArrayFieldStart(field);
		for (String string : strings) {
			json.writeString(string);
		}
		json.writeEndArray();
	}
}
