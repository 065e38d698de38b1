package org.setwright.command.fitness;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.check.coverage.ConditionCoverage;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.coverage.RuleCoverage;
import org.setwright.check.coverage.SettingCoverage;
import org.setwright.check.fitness.Reached;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.FiguresJson;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** What the saved jobs try out of a book, and what they do not. */
record CoverageReport(OpenBook open, Coverage coverage) implements Report {

	@Override
	public String word() {
		return "coverage";
	}

	@Override
	public int exitCode() {
		return reached().stream().allMatch(Reached::enough) ? ExitCode.FINE : ExitCode.PROBLEMS;
	}

	private List<Reached> reached() {
		return Reached.of(open.book().floors(), coverage, Optional.empty());
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, open.book().name() + ": what " + Problems.counted(coverage.jobs(), "job") + " try out").blank();
		reached().forEach(r -> page.line(2, r.enough() ? Style.PLAIN : Style.ALARM, r.sentence() + (r.enough() ? "" : ": too little")));
		rules(page, "No job lets these rules speak", coverage.rules().stream().filter(r -> r.spoke() == 0).toList());
		rules(page, "These rules spoke, and never decided anything",
				coverage.rules().stream().filter(r -> r.spoke() > 0 && r.decided().isEmpty()).toList());
		conditions(page);
		page.blank().line(0, Style.STRONG, "Values no job comes to");
		coverage.settings().stream().filter(s -> !s.never().isEmpty()).forEach(s -> page.line(2, Style.PLAIN, s.setting().label() + ": " + String.join(", ", s.never())));
	}

	private static void rules(Page page, String title, List<RuleCoverage> rules) {
		if (!rules.isEmpty()) {
			page.blank().line(0, Style.STRONG, title);
			rules.forEach(r -> page.line(2, Style.PLAIN, r.rule().name() + "   [" + r.rule().at() + "]"));
		}
	}

	private void conditions(Page page) {
		page.blank().line(0, Style.STRONG, "Conditions seen one way only");
		for (RuleCoverage rule : coverage.rules()) {
			List<ConditionCoverage> oneWay = rule.conditions().stream().filter(c -> !c.bothWays()).toList();
			if (rule.spoke() > 0 && !oneWay.isEmpty()) {
				page.line(2, Style.PLAIN, rule.rule().name());
				oneWay.forEach(c -> page.line(4, Style.QUIET, c.words() + ": never " + (c.failed() == 0 ? "failed" : "held") + "   [" + c.at() + "]"));
			}
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeNumberField("jobs", coverage.jobs());
		FiguresJson.write(json, reached());
		json.writeArrayFieldStart("rules");
		for (RuleCoverage rule : coverage.rules()) {
			rule(json, rule);
		}
		json.writeEndArray();
		json.writeArrayFieldStart("settings");
		for (SettingCoverage setting : coverage.settings()) {
			json.writeStartObject();
			json.writeStringField("setting", setting.setting().label());
			json.writeArrayFieldStart("settled");
			for (var value : setting.settled().entrySet()) {
				json.writeStartObject();
				json.writeStringField("value", value.getKey());
				json.writeNumberField("jobs", value.getValue());
				json.writeEndObject();
			}
			json.writeEndArray();
			strings(json, "never", setting.never());
			json.writeNumberField("open", setting.open());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private static void rule(JsonGenerator json, RuleCoverage rule) throws IOException {
		json.writeStartObject();
		json.writeStringField("rule", rule.rule().name());
		json.writeStringField("at", rule.rule().at().toString());
		strings(json, "decided", rule.decided());
		strings(json, "outranked", rule.outranked());
		json.writeNumberField("silent", rule.silent());
		strings(json, "heldOpen", rule.heldOpen());
		json.writeArrayFieldStart("conditions");
		for (ConditionCoverage condition : rule.conditions()) {
			json.writeStartObject();
			json.writeStringField("words", condition.words());
			json.writeStringField("at", condition.at().toString());
			json.writeNumberField("held", condition.held());
			json.writeNumberField("failed", condition.failed());
			json.writeEndObject();
		}
		json.writeEndArray();
		json.writeEndObject();
	}

	private static void strings(JsonGenerator json, String name, List<String> values) throws IOException {
		json.writeArrayFieldStart(name);
		for (String value : values) {
			json.writeString(value);
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("rule", "at", "decided", "outranked", "silent", "held open", "conditions", "conditions both ways"));
		coverage.rules().forEach(r -> rows.add(List.of(r.rule().name(), r.rule().at().toString(), Integer.toString(r.decided().size()),
				Integer.toString(r.outranked().size()), Integer.toString(r.silent()), Integer.toString(r.heldOpen().size()),
				Integer.toString(r.conditions().size()), Long.toString(r.conditions().stream().filter(ConditionCoverage::bothWays).count()))));
		return rows;
	}
}
