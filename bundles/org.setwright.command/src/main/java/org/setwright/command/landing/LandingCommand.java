package org.setwright.command.landing;

import org.setwright.book.JobCase;
import org.setwright.command.answer.Report;
import org.setwright.command.asking.JobQuestion;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.landing.LandingPlan;
import picocli.CommandLine.Command;

/** Tells which conductor of a job is landed where. */
@Command(name = "landing", description = "Show which conductor to land where at the wall and at the equipment, and what no conductor is left for.")
public final class LandingCommand extends JobQuestion {

	/** @param surroundings where the program runs */
	public LandingCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(OpenBook open, Edition edition, JobCase jobCase) {
		return new LandingReport(open, jobCase, LandingPlan.of(edition.run(jobCase.job())));
	}
}
