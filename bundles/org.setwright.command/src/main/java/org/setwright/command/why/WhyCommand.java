package org.setwright.command.why;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Explains one setting of a job, or all. */
@Command(name = "why", description = "Show why a setting comes to what it does: its rules, and the answers they rest on.")
public final class WhyCommand implements Callable<Integer> {
	@Parameters(index = "0", paramLabel = "JOB", description = "The job's name or file, or a part of it.")
	private String job;
	@Parameters(index = "1", arity = "0..1", paramLabel = "SETTING",
			description = "The setting's name, or a part of it; every setting of the job when left out.")
	private String setting;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public WhyCommand(Surroundings surroundings) {
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(e -> report(open, e)).orElseGet(() -> new CheckReport(open)));
	}

	private WhyReport report(OpenBook open, Edition edition) {
		JobCase jobCase = open.job(job);
		Optional<Setting> wanted = Optional.ofNullable(setting).map(open::setting);
		Outcome outcome = edition.run(jobCase.job());
		List<SettingOutcome> shown = wanted.map(w -> outcome.setting(w).stream().toList()).orElse(outcome.settings());
		List<Setting> notNeeded = wanted.filter(w -> shown.isEmpty()).stream().toList();
		return new WhyReport(open, jobCase, shown, notNeeded);
	}
}
