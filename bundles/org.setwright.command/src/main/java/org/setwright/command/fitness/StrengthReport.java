package org.setwright.command.fitness;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.Floors.Figure;
import org.setwright.book.JobCase;
import org.setwright.check.fitness.Reached;
import org.setwright.check.strength.Catching;
import org.setwright.check.strength.Mistake;
import org.setwright.check.strength.Strength;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.FiguresJson;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** Which deliberate mistakes the saved jobs notice. */
record StrengthReport(OpenBook open, Strength strength) implements Report {
	private static final int KIND_WIDTH = 22;
	private static final int COUNT_WIDTH = 14;

	@Override
	public String word() {
		return "strength";
	}

	@Override
	public int exitCode() {
		return reached().enough() ? ExitCode.FINE : ExitCode.PROBLEMS;
	}

	private Reached reached() {
		return new Reached(Figure.MISTAKES_CAUGHT, strength.share(), open.book().floors().of(Figure.MISTAKES_CAUGHT));
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, open.book().name() + ": " + Problems.counted(strength.tried().size(), "deliberate mistake") + ", "
				+ strength.survivors().size() + " unnoticed").blank();
		page.line(2, reached().enough() ? Style.GOOD : Style.ALARM, reached().sentence()).blank();
		for (Mistake.Kind kind : Mistake.Kind.values()) {
			long all = strength.tried().stream().filter(t -> t.mistake().kind() == kind).count();
			long unnoticed = strength.survivors().stream().filter(t -> t.mistake().kind() == kind).count();
			page.row(2, new Cell(KIND_WIDTH, Style.PLAIN, kind.words()), new Cell(COUNT_WIDTH, Style.PLAIN, (all - unnoticed) + " of " + all));
		}
		if (!strength.left().isEmpty()) {
			page.blank().line(0, Style.ATTENTION, "Notice nothing, because they expect nothing or do not come to what they expect: "
					+ strength.left().stream().map(JobCase::name).collect(Collectors.joining(", ")));
		}
		byRule().forEach((rule, survivors) -> {
			page.blank().line(0, Style.STRONG, rule);
			survivors.forEach(t -> survivor(page, t));
		});
	}

	private Map<String, List<Strength.Tried>> byRule() {
		return strength.survivors().stream().collect(Collectors.groupingBy(t -> t.mistake().rule().name(), LinkedHashMap::new, Collectors.toList()));
	}

	private void survivor(Page page, Strength.Tried tried) {
		Mistake mistake = tried.mistake();
		page.line(2, Style.PLAIN, mistake.kind().words() + ": " + mistake.sentence() + "   [" + mistake.at() + "]");
		would(tried).ifPresent(w -> page.line(4, Style.QUIET, w));
	}

	private Optional<String> would(Strength.Tried tried) {
		return Catching.of(tried, open.book().jobs()).map(Catching::sentence);
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		FiguresJson.write(json, List.of(reached()));
		json.writeArrayFieldStart("mistakes");
		for (Strength.Tried tried : strength.tried()) {
			json.writeStartObject();
			json.writeStringField("rule", tried.mistake().rule().name());
			json.writeStringField("kind", tried.mistake().kind().words());
			json.writeStringField("mistake", tried.mistake().sentence());
			json.writeStringField("at", tried.mistake().at().toString());
			json.writeBooleanField("noticed", tried.noticedBy().isPresent());
			if (tried.noticedBy().isPresent()) {
				json.writeStringField("by", tried.noticedBy().get().path());
			}
			Optional<String> would = would(tried);
			if (would.isPresent()) {
				json.writeStringField("wouldBeNoticed", would.get());
			}
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("rule", "kind", "mistake", "at", "noticed by", "would be noticed"));
		strength.tried().forEach(t -> rows.add(List.of(t.mistake().rule().name(), t.mistake().kind().words(), t.mistake().sentence(),
				t.mistake().at().toString(), t.noticedBy().map(JobCase::path).orElse(""), would(t).orElse(""))));
		return rows;
	}
}
