package org.setwright.command.landing;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.setwright.landing.LandingPlan;
import org.setwright.landing.need.Check;
import org.setwright.landing.need.Need;
import org.setwright.landing.plan.End;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Shared;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.plan.Warning;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.wiring.TerminalMark;

/** A landing plan as JSON; OUTPUT.md describes it. */
record LandingJson(JsonGenerator json) {

	/** Writes one element of a list. */
	private interface Writer<T> {
		void write(T element) throws IOException;
	}

	void write(LandingPlan plan) throws IOException {
		list("stops", plan.stops(), this::warning);
		list("landings", plan.landings(), this::landing);
		list("shared", plan.shared(), this::shared);
		list("unused", plan.unused(), this::unused);
		list("unserved", plan.unserved(), this::unserved);
		list("toFindOut", plan.toFindOut(), c -> json.writeString(c.sentence()));
		list("cautions", plan.cautions(), this::warning);
	}

	private void landing(Landing landing) throws IOException {
		json.writeStartObject();
		conductor(landing.conductor());
		need(landing.need());
		json.writeStringField("change", landing.change().label());
		json.writeBooleanField("sure", landing.isSure());
		end("wall", landing.atWall());
		end("equipment", landing.atEquipment());
		json.writeStringField("reason", landing.reason());
		json.writeStringField("source", landing.source());
		list("checks", landing.checks(), this::check);
		list("restsOn", landing.need().restsOn().stream().map(Setting::id).toList(), json::writeString);
		list("heldOpenBy", landing.heldOpenBy().stream().map(Setting::id).toList(), json::writeString);
		json.writeEndObject();
	}

	private void shared(Shared shared) throws IOException {
		json.writeStartObject();
		conductor(shared.conductor());
		need(shared.need());
		json.writeStringField("how", shared.economy().how());
		json.writeStringField("loses", shared.economy().loses());
		json.writeStringField("source", shared.economy().source());
		json.writeEndObject();
	}

	private void unused(Unused unused) throws IOException {
		json.writeStartObject();
		conductor(unused.conductor());
		json.writeStringField("wall", Named.mark(unused.conductor().control()));
		json.writeStringField("equipment", Named.mark(unused.conductor().equipment()));
		json.writeStringField("doThis", unused.doThis());
		json.writeStringField("because", unused.because());
		json.writeStringField("source", unused.source());
		json.writeEndObject();
	}

	private void unserved(Unserved unserved) throws IOException {
		json.writeStartObject();
		need(unserved.need());
		json.writeStringField("strength", Named.strength(unserved.need()));
		json.writeStringField("because", unserved.because());
		json.writeStringField("source", unserved.source());
		list("heldOpenBy", unserved.need().heldOpenBy().stream().map(Setting::id).toList(), json::writeString);
		list("remedies", unserved.remedies(), r -> json.writeString(r.sentence()));
		json.writeEndObject();
	}

	private void warning(Warning warning) throws IOException {
		json.writeStartObject();
		json.writeStringField("kind", warning.kind().label());
		json.writeStringField("sentence", warning.sentence());
		json.writeStringField("source", warning.source());
		json.writeEndObject();
	}

	private void check(Check check) throws IOException {
		json.writeStartObject();
		json.writeStringField("sentence", check.sentence());
		Optional<String> unknown = check.unknown().map(JobField::label);
		if (unknown.isPresent()) {
			json.writeStringField("unknown", unknown.get());
		}
		json.writeEndObject();
	}

	private void conductor(Conductor conductor) throws IOException {
		json.writeNumberField("wire", conductor.item() + 1);
		json.writeStringField("colour", conductor.label());
		json.writeStringField("gauge", Named.gauge(conductor, ""));
	}

	private void need(Need need) throws IOException {
		json.writeStringField("duty", need.duty().label());
		json.writeNumberField("part", need.part());
		json.writeNumberField("parts", need.of());
	}

	private void end(String name, End end) throws IOException {
		json.writeObjectFieldStart(name);
		json.writeStringField("from", Named.mark(end.from()));
		json.writeStringField("to", end.to().map(TerminalMark::label).orElse("left as it is"));
		if (end.machine().isPresent()) {
			json.writeStringField("machine", end.machine().get().label());
		}
		json.writeEndObject();
	}

	private <T> void list(String name, List<T> all, Writer<T> writer) throws IOException {
		json.writeArrayFieldStart(name);
		for (T one : all) {
			writer.write(one);
		}
		json.writeEndArray();
	}
}
