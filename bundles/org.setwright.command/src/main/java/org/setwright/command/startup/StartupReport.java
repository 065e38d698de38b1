package org.setwright.command.startup;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.book.JobCase;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Line;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.UnitSystem;

/** The start-up checks of one job. @param reasons whether the text gives the reason and source behind each check */
record StartupReport(Surroundings at, OpenBook open, JobCase jobCase, Outcome outcome, UnitSystem units, boolean reasons)
		implements Report {
	private static final List<String> HEADER = List.of("number", "phase", "certain", "callFor", "see", "ifNot", "wait", "undecided",
			"toFindOut", "rule", "authority", "because", "source", "at");

	@Override
	public String word() {
		return "startup";
	}

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		new StartupText(page, this).print();
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeStringField("job", jobCase.name());
		json.writeStringField("path", jobCase.path());
		new StartupJson(json, units).write(outcome);
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>(List.of(HEADER));
		for (StartUpCheck check : outcome.startUp()) {
			rows.add(List.of(Integer.toString(rows.size()), check.phase().label(), check.certain() ? "yes" : "perhaps", said(check.callFor()),
					said(check.see()), said(check.ifNot()), said(check.pause()), settings(check), places(check),
					rules(check, Rule::name), rules(check, r -> r.authority().label()), rules(check, Rule::because),
					rules(check, Rule::source), rules(check, r -> r.at().toString())));
		}
		return rows;
	}

	/** @return {@code line} in the units asked for */
	String said(Line line) {
		return line.text(units);
	}

	private String said(Optional<Line> line) {
		return line.map(this::said).orElse("");
	}

	static String settings(StartUpCheck check) {
		return check.undecided().stream().map(Setting::label).collect(Collectors.joining("; "));
	}

	/** The same question about several facts of a kind stands once. */
	static String places(StartUpCheck check) {
		return check.toFindOut().stream().map(u -> u.kind().many() && u.field().isPresent() ? u.kind().key() + ": " + u.field().get().label() : u.label())
				.distinct().sorted().collect(Collectors.joining("; "));
	}

	private static String rules(StartUpCheck check, Function<Rule, String> part) {
		return check.saidBy().stream().map(part).collect(Collectors.joining("; "));
	}
}
