package org.setwright.command.startup;

import java.util.concurrent.Callable;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.trade.catalogue.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the start-up checks of a job. */
@Command(name = "startup", description = "Show what to prove when the equipment of a job is started, step by step.")
public final class StartupCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(index = "0", paramLabel = "JOB", description = "The job's name or file, or a part of it.")
	private String job;
	@Option(names = "--units", paramLabel = "UNITS", defaultValue = "both",
			description = "Show quantities in ip (°F, cfm), si (°C, L/s) or both; both when left out.")
	private UnitSystem units;
	@Option(names = "--reasons", description = "Print under each check why its rule says so, and its source.")
	private boolean reasons;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public StartupCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(edition -> {
			JobCase wanted = open.job(job);
			return new StartupReport(surroundings, open, wanted, edition.run(wanted.job()), units, reasons);
		}).orElseGet(() -> new CheckReport(open)));
	}
}
