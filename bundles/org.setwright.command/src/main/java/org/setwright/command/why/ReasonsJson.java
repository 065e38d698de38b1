package org.setwright.command.why;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Standing;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** The reasons behind one setting as JSON; OUTPUT.md describes it. */
record ReasonsJson(JsonGenerator json, JobCase jobCase) {

	void write(SettingOutcome outcome) throws IOException {
		json.writeStartObject();
		json.writeStringField("setting", outcome.setting().id());
		json.writeStringField("label", outcome.setting().label());
		json.writeStringField("state", outcome.state().name().toLowerCase(Locale.ROOT));
		json.writeArrayFieldStart("proposals");
		for (Proposal proposal : outcome.proposals()) {
			json.writeStartObject();
			json.writeStringField("standing", Standing.of(proposal, outcome).word());
			json.writeStringField("value", proposal.value().text());
			json.writeFieldName("by");
			firing(proposal.firing());
			json.writeEndObject();
		}
		json.writeEndArray();
		heldOpen(outcome.heldOpen());
		json.writeEndObject();
	}

	private void firing(Firing firing) throws IOException {
		Rule rule = firing.rule();
		json.writeStartObject();
		json.writeStringField("rule", rule.name());
		json.writeStringField("authority", rule.authority().label());
		json.writeStringField("because", rule.because());
		json.writeStringField("source", rule.source());
		Problems.at(json, rule.at());
		json.writeArrayFieldStart("reasons");
		for (Reason reason : firing.reasons()) {
			reason(reason);
		}
		json.writeEndArray();
		json.writeEndObject();
	}

	private void reason(Reason reason) throws IOException {
		json.writeStartObject();
		json.writeStringField("sentence", reason.sentence());
		if (reason instanceof Reason.OfFact fact) {
			json.writeArrayFieldStart("answers");
			for (Reason.Tested tested : fact.tested()) {
				answer(tested);
			}
			json.writeEndArray();
		} else if (reason instanceof Reason.OfFinding finding) {
			json.writeStringField("finding", finding.finding());
			json.writeArrayFieldStart("madeBy");
			for (Firing firing : finding.madeBy()) {
				firing(firing);
			}
			json.writeEndArray();
		} else if (reason instanceof Reason.OfAbsence absence) {
			strings("lookedAt", absence.looked().stream().map(b -> b.place().label()).toList());
			bases("looked", absence.looked());
			json.writeArrayFieldStart("findings");
			for (Reason.AskedFinding asked : absence.findings()) {
				asked(asked);
			}
			json.writeEndArray();
		}
		json.writeEndObject();
	}

	private void answer(Reason.Tested tested) throws IOException {
		json.writeStartObject();
		json.writeStringField("asked", tested.field().label());
		json.writeStringField("answer", tested.actual().value().map(Value::text).orElse("unknown"));
		json.writeStringField("wanted", tested.wanted());
		at(tested.field());
		calculation(tested.basis());
		json.writeEndObject();
	}

	private void asked(Reason.AskedFinding asked) throws IOException {
		json.writeStartObject();
		json.writeStringField("finding", asked.finding());
		json.writeArrayFieldStart("madeBy");
		for (Firing firing : asked.madeBy()) {
			firing(firing);
		}
		json.writeEndArray();
		json.writeArrayFieldStart("silent");
		for (Reason.SilentMaker maker : asked.silent()) {
			json.writeStartObject();
			json.writeStringField("rule", maker.rule().name());
			bases("looked", maker.looked());
			json.writeEndObject();
		}
		json.writeEndArray();
		json.writeEndObject();
	}

	private void bases(String field, List<Basis> bases) throws IOException {
		json.writeArrayFieldStart(field);
		for (Basis basis : bases) {
			json.writeStartObject();
			json.writeStringField("asked", basis.place().label());
			json.writeStringField("answer", basis.said());
			at(basis.place());
			calculation(basis);
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void calculation(Basis basis) throws IOException {
		if (basis.calculation().isPresent()) {
			json.writeObjectFieldStart("calculation");
			json.writeStringField("formula", basis.calculation().get().formula());
			json.writeStringField("source", basis.calculation().get().source());
			bases("from", basis.calculation().get().from());
			json.writeEndObject();
		}
	}

	private void at(JobField place) throws IOException {
		Position at = jobCase.positions().get(place);
		if (at != null) {
			Problems.at(json, at);
		}
	}

	private void heldOpen(List<HeldOpen> heldOpen) throws IOException {
		json.writeArrayFieldStart("heldOpen");
		for (HeldOpen held : heldOpen) {
			json.writeStartObject();
			json.writeStringField("rule", held.rule().name());
			strings("by", held.by().stream().map(JobField::label).sorted().toList());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void strings(String field, List<String> strings) throws IOException {
		json.writeArrayFieldStart(field);
		for (String string : strings) {
			json.writeString(string);
		}
		json.writeEndArray();
	}
}
