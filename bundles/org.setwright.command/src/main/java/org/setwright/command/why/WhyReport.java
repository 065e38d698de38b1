package org.setwright.command.why;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.check.reasons.ReasonOutline;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.picture.Derivation;
import org.setwright.picture.Picture;
import org.setwright.picture.SvgText;
import org.setwright.picture.TextMeasure;
import org.setwright.trade.catalogue.Setting;

/**
 * The reasons behind settings of one job.
 *
 * @param notNeeded settings asked for that the job neither needs nor gets
 */
record WhyReport(OpenBook open, JobCase jobCase, List<SettingOutcome> settings, List<Setting> notNeeded) implements Report {

	@Override
	public String word() {
		return "why";
	}

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, jobCase.name());
		for (SettingOutcome outcome : settings) {
			page.blank();
			OutlineText.print(page, 0, ReasonOutline.of(outcome, jobCase), outcome.state());
		}
		for (Setting setting : notNeeded) {
			page.blank().line(0, Style.STRONG, setting.label() + ": not needed on this job, and no rule proposes it");
			page.line(2, Style.PLAIN, setting.meaning());
			if (!setting.requiredWhen().isEmpty()) {
				page.line(2, Style.QUIET, "A job needs it when: " + setting.requiredWhen());
			}
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeStringField("job", jobCase.name());
		json.writeStringField("path", jobCase.path());
		json.writeArrayFieldStart("settings");
		for (SettingOutcome outcome : settings) {
			new ReasonsJson(json, jobCase).write(outcome);
		}
		json.writeEndArray();
		json.writeArrayFieldStart("notNeeded");
		for (Setting setting : notNeeded) {
			json.writeString(setting.id());
		}
		json.writeEndArray();
	}

	@Override
	public String svg() {
		if (settings.size() != 1) {
			return Report.super.svg();
		}
		SettingOutcome outcome = settings.get(0);
		return SvgText.of(Picture.of(Derivation.of(outcome), TextMeasure.USUAL), jobCase.name() + ": why " + outcome.setting().label());
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new java.util.ArrayList<>();
		rows.add(List.of("setting", "depth", "kind", "words", "at"));
		for (SettingOutcome outcome : settings) {
			ReasonOutline.of(outcome, jobCase).forEach(step -> rows.add(List.of(outcome.setting().id(),
					Integer.toString(step.depth()), step.kind(), step.words(), step.at())));
		}
		return rows;
	}
}
