package org.setwright.command.asking;

import java.util.stream.Collectors;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.change.Sensitivity;
import org.setwright.trade.catalogue.Setting;
import picocli.CommandLine.Command;

/** Tells which answers of a job to check first, because a wrong one changes most. */
@Command(name = "matters", description = "Show which answers of a job change most settings if they are wrong: check those first.")
public final class MattersCommand extends JobQuestion {

	/** @param surroundings where the program runs */
	public MattersCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(OpenBook open, Edition edition, JobCase jobCase) {
		Steps steps = new Steps();
		for (Sensitivity matter : edition.about(jobCase.job()).whatMatters(() -> false)) {
			Position at = jobCase.positions().get(matter.place());
			steps.add(0, "answer", Style.STRONG, matter.place().label(), at == null ? "" : at.toString());
			steps.add(1, "would change", Style.PLAIN, "if " + matter.instead().sentence(jobCase.job()) + ": "
					+ matter.changes().stream().map(Setting::label).collect(Collectors.joining(", ")), "");
		}
		return new OutlineReport("matters", open, jobCase, jobCase.name() + ": check these answers first", steps.all());
	}
}
