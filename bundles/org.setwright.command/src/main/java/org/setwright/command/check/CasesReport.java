package org.setwright.command.check;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.cases.Standing;
import org.setwright.check.fitness.Reached;
import org.setwright.check.reasons.ReasonOutline.Step;
import org.setwright.check.report.Telling;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.FiguresJson;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.Hint;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.command.why.OutlineText;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;

/**
 * What is in a book, what is wrong with it, and how its jobs stand against what they expect.
 *
 * @param reached the figures for which the book demands something; empty when it does not, or when only some jobs ran
 */
record CasesReport(Surroundings at, OpenBook open, CaseCheck check, List<Reached> reached) implements Report {

	@Override
	public String word() {
		return "check";
	}

	@Override
	public int exitCode() {
		return check.allMet() && reached.stream().allMatch(Reached::enough) ? ExitCode.FINE : ExitCode.PROBLEMS;
	}

	@Override
	public void text(Page page) {
		new CheckReport(open).text(page);
		check.amiss().forEach(job -> amiss(page, job));
		page.blank().line(0, check.allMet() ? Style.GOOD : Style.ALARM, Problems.counted(check.jobs().size(), "job") + " run: " + check.count(Standing.MET)
				+ " met, " + check.count(Standing.NOT_MET) + (check.allMet() ? " not met, " : " NOT MET, ") + check.count(Standing.NOT_ASKED) + " not asked.");
		reached.forEach(r -> page.line(0, r.enough() ? Style.GOOD : Style.ALARM,
				Character.toUpperCase(r.sentence().charAt(0)) + r.sentence().substring(1) + (r.enough() ? "." : ": TOO LITTLE.")));
		if (check.jobs().size() < open.book().jobs().size() && !open.book().floors().shares().isEmpty()) {
			page.line(0, Style.QUIET, "The shares the book demands are looked at only when all its jobs run.");
		}
		check.amiss().stream().filter(j -> !j.notMet().isEmpty()).findFirst().ifPresent(job -> hint(page, job));
	}

	private static void amiss(Page page, CheckedJob job) {
		page.blank().line(0, Style.STRONG, job.job().name());
		if (!job.fault().isEmpty()) {
			page.line(2, Style.ALARM, "NOT RUN: " + job.fault());
		}
		for (Point point : job.notMet()) {
			page.line(2, Style.ALARM, point.what() + ": " + point.sentence() + "   [" + point.at() + "]");
			OutlineText.print(page, 4, behind(point, job), state(point));
		}
	}

	/** The value itself has just been said. */
	private static List<Step> behind(Point point, CheckedJob job) {
		List<Step> steps = Telling.reasons(point, job.job());
		return !steps.isEmpty() && steps.get(0).kind().equals("setting")
				? steps.stream().skip(1).map(s -> new Step(s.depth() - 1, s.kind(), s.words(), s.at())).toList()
				: steps;
	}

	private static State state(Point point) {
		return point instanceof SettingPoint setting ? setting.outcome().map(SettingOutcome::state).orElse(State.SETTLED) : State.SETTLED;
	}

	private void hint(Page page, CheckedJob job) {
		String name = OpenBook.shortName(job.job());
		Optional<String> setting = job.notMet().stream().filter(SettingPoint.class::isInstance).map(Point::what).findFirst();
		List<String> words = new ArrayList<>(List.of("accept", name));
		setting.ifPresent(words::add);
		words.addAll(List.of("--by", "your name", "--because", "the reason"));
		Hint.text(page, List.of(Hint.of(at, open, "when the rules are wrong: everything about the job, to find where", "setup", name),
				Hint.of(at, open, "when the expectation is wrong: take the new outcome for right, and say why", words.toArray(String[]::new))));
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		new CheckReport(open).json(json);
		counts(json, check.count(Standing.MET), check.count(Standing.NOT_MET), check.count(Standing.NOT_ASKED));
		FiguresJson.write(json, reached);
		json.writeArrayFieldStart("cases");
		for (CheckedJob job : check.jobs()) {
			json.writeStartObject();
			json.writeStringField("job", job.job().name());
			json.writeStringField("path", job.job().path());
			json.writeStringField("fault", job.fault());
			counts(json, job.count(Standing.MET), job.count(Standing.NOT_MET), job.count(Standing.NOT_ASKED));
			json.writeArrayFieldStart("points");
			for (Point point : job.points()) {
				point(json, point, job);
			}
			json.writeEndArray();
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private static void counts(JsonGenerator json, long met, long notMet, long notAsked) throws IOException {
		json.writeNumberField("met", met);
		json.writeNumberField("notMet", notMet);
		json.writeNumberField("notAsked", notAsked);
	}

	private static void point(JsonGenerator json, Point point, CheckedJob job) throws IOException {
		json.writeStartObject();
		json.writeStringField("what", point.what());
		if (point instanceof SettingPoint setting) {
			json.writeStringField("setting", setting.setting().id());
		}
		json.writeStringField("standing", point.standing().word());
		json.writeStringField("expected", point.expected());
		json.writeStringField("came", point.came());
		Problems.at(json, point.at());
		json.writeArrayFieldStart("reasons");
		for (Step step : point.standing() == Standing.NOT_MET ? Telling.reasons(point, job.job()) : List.<Step>of()) {
			json.writeStartObject();
			json.writeNumberField("depth", step.depth());
			json.writeStringField("kind", step.kind());
			json.writeStringField("words", step.words());
			json.writeStringField("at", step.at());
			json.writeEndObject();
		}
		json.writeEndArray();
		json.writeEndObject();
	}

	/** One row for each problem, as without running, and one for each point. */
	@Override
	public List<List<String>> csv() {
		List<List<String>> problems = new CheckReport(open).csv();
		Stream<List<String>> points = check.jobs().stream().flatMap(job -> job.points().stream().map(p -> List.of("", p.at().file(),
				Integer.toString(p.at().line()), Integer.toString(p.at().column()), p.sentence(), "", job.job().name(), p.what(), p.standing().word(),
				p.expected(), p.came())));
		return Stream.concat(problems.stream(), points).toList();
	}
}
