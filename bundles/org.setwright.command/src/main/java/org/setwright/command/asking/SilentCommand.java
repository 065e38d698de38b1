package org.setwright.command.asking;

import org.setwright.book.JobCase;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.Inquiry;
import org.setwright.engine.explaining.ReadAloud;
import org.setwright.engine.language.Rule;
import org.setwright.engine.whynot.WhyNot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells what became of a rule on a job, or of every rule that did not decide anything. */
@Command(name = "silent", description = "Show why a rule stays silent on a job, and what would make it speak.")
public final class SilentCommand extends JobQuestion {
	@Parameters(index = "1", arity = "0..1", paramLabel = "RULE",
			description = "The rule's name, or a part of it; every rule that does not speak when left out.")
	private String rule;

	/** @param surroundings where the program runs */
	public SilentCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(OpenBook open, Edition edition, JobCase jobCase) {
		Inquiry inquiry = edition.about(jobCase.job());
		Steps steps = new Steps();
		if (rule == null) {
			inquiry.ofEveryRule().stream().filter(w -> w.status() != WhyNot.Status.FIRED).forEach(w -> steps.rule(0, w, jobCase));
		} else {
			one(inquiry, open.rule(rule, edition), jobCase, steps);
		}
		return new OutlineReport("silent", open, jobCase, jobCase.name(), steps.all());
	}

	private static void one(Inquiry inquiry, Rule asked, JobCase jobCase, Steps steps) {
		WhyNot why = inquiry.whyNot(asked);
		steps.rule(0, why, jobCase);
		steps.add(1, "aloud", Style.QUIET, ReadAloud.of(asked).text(), "");
		if (why.blockers().isEmpty()) {
			inquiry.outcome().firings().stream().filter(f -> f.rule() == asked).forEach(f -> steps.firing(1, "because of ", f));
		} else {
			steps.changes(inquiry.toFire(asked, new Patience()), jobCase, "it would speak");
		}
	}
}
