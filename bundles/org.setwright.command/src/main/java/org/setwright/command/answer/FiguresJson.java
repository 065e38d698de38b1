package org.setwright.command.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.setwright.check.fitness.Reached;

/** The field "figures": what a book reaches, beside what it demands. */
public final class FiguresJson {
	private FiguresJson() {
	}

	/** Writes the field. */
	public static void write(JsonGenerator json, List<Reached> reached) throws IOException {
		json.writeArrayFieldStart("figures");
		for (Reached figure : reached) {
			json.writeStartObject();
			json.writeStringField("figure", figure.figure().words());
			json.writeNumberField("share", figure.share());
			if (figure.least().isPresent()) {
				json.writeNumberField("atLeast", figure.least().get());
			}
			json.writeBooleanField("enough", figure.enough());
			json.writeEndObject();
		}
		json.writeEndArray();
	}
}
