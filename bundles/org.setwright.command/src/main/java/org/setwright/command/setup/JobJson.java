package org.setwright.command.setup;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.SettingPoint;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Standing;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Finding;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** One job's result as JSON; OUTPUT.md describes it. */
record JobJson(JsonGenerator json) {

	void write(JobResult result) throws IOException {
		Outcome outcome = result.outcome();
		json.writeStartObject();
		json.writeStringField("job", result.jobCase().name());
		json.writeStringField("path", result.jobCase().path());
		json.writeNumberField("settled", outcome.count(State.SETTLED));
		json.writeNumberField("outranked", result.outranked());
		json.writeNumberField("disputed", outcome.count(State.DISPUTED));
		json.writeNumberField("gaps", outcome.count(State.GAP));
		json.writeNumberField("perhaps", outcome.count(State.PERHAPS));
		cautions(outcome.cautions());
		settings(outcome.settings());
		expectations(result.expectations());
		findings(outcome.findings());
		toFindOut(outcome.toFindOut());
		json.writeEndObject();
	}

	private void cautions(List<Caution> cautions) throws IOException {
		json.writeArrayFieldStart("cautions");
		for (Caution caution : cautions) {
			json.writeStartObject();
			json.writeStringField("kind", caution.kind().label());
			json.writeStringField("sentence", caution.sentence());
			raisedBy("raisedBy", caution.raisedBy());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void settings(List<SettingOutcome> settings) throws IOException {
		json.writeArrayFieldStart("settings");
		for (SettingOutcome outcome : settings) {
			json.writeStartObject();
			json.writeStringField("setting", outcome.setting().id());
			json.writeStringField("label", outcome.setting().label());
			json.writeStringField("group", outcome.setting().group());
			json.writeStringField("state", word(outcome.state()));
			json.writeStringField("need", word(outcome.need()));
			json.writeFieldName("value");
			value(outcome);
			proposals(outcome);
			heldOpen(outcome.heldOpen());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void value(SettingOutcome outcome) throws IOException {
		if (outcome.value().isEmpty()) {
			json.writeNull();
			return;
		}
		Value value = outcome.value().get();
		json.writeStartObject();
		json.writeStringField("text", value.text());
		if (value instanceof Value.Count count) {
			json.writeNumberField("number", count.number());
		} else if (value instanceof Value.Amount amount) {
			json.writeNumberField("number", amount.quantity().number());
			json.writeStringField("unit", amount.quantity().unit().symbol());
		} else if (value instanceof Value.OneOf one) {
			json.writeStringField("word", one.option().id());
		} else if (value instanceof Value.Flag flag) {
			json.writeBooleanField("yes", flag.yes());
		}
		json.writeEndObject();
	}

	private void proposals(SettingOutcome outcome) throws IOException {
		json.writeArrayFieldStart("proposals");
		for (Proposal proposal : outcome.proposals()) {
			Rule rule = proposal.rule();
			json.writeStartObject();
			json.writeStringField("standing", Standing.of(proposal, outcome).word());
			json.writeStringField("value", proposal.value().text());
			json.writeStringField("rule", rule.name());
			json.writeStringField("authority", rule.authority().label());
			json.writeStringField("because", rule.because());
			json.writeStringField("source", rule.source());
			Problems.at(json, rule.at());
			json.writeEndObject();
		}
		json.writeEndArray();
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

	private void expectations(List<Point> expectations) throws IOException {
		json.writeArrayFieldStart("expectations");
		for (Point point : expectations) {
			json.writeStartObject();
			if (point instanceof SettingPoint of) {
				json.writeStringField("setting", of.setting().id());
			} else {
				json.writeStringField("besides", point.what());
			}
			json.writeStringField("expected", point.expected());
			json.writeStringField("came", point.came());
			json.writeBooleanField("met", point.met());
			Problems.at(json, point.at());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void findings(List<Finding> findings) throws IOException {
		json.writeArrayFieldStart("findings");
		for (Finding finding : findings) {
			json.writeStartObject();
			json.writeStringField("finding", finding.name());
			raisedBy("madeBy", finding.madeBy());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void toFindOut(List<ToFindOut> unknowns) throws IOException {
		json.writeArrayFieldStart("toFindOut");
		for (ToFindOut unknown : unknowns) {
			json.writeStartObject();
			json.writeStringField("unknown", unknown.unknown().label());
			strings("couldChange", unknown.holdsOpen().stream().map(Setting::id).toList());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private void raisedBy(String field, List<Firing> firings) throws IOException {
		strings(field, firings.stream().map(f -> f.rule().name()).distinct().toList());
	}

	private void strings(String field, List<String> strings) throws IOException {
		json.writeArrayFieldStart(field);
		for (String string : strings) {
			json.writeString(string);
		}
		json.writeEndArray();
	}

	static String word(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}
}
