package org.setwright.command.fitness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.setwright.book.AtomicFile;
import org.setwright.book.JobNotWritten;
import org.setwright.check.strength.Catching;
import org.setwright.check.strength.Strength;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes deliberate mistakes and sees which saved job notices. */
@Command(name = "strength", description = "Make small mistakes in the rules on purpose, and show which of them no saved job would notice.")
public final class StrengthCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Option(names = "--search", description = "Look for a job that would notice each mistake nobody noticed; takes a while.")
	private boolean search;
	@Option(names = "--jobs-to", paramLabel = "DIR", description = "Write the jobs found there, to be read and kept; implies --search.")
	private Path folder;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public StrengthCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(e -> report(open, e)).orElseGet(() -> new CheckReport(open)));
	}

	private StrengthReport report(OpenBook open, Edition edition) {
		ProgressLine trying = new ProgressLine(surroundings, "mistakes");
		Strength strength = Strength.of(edition, open.book().jobs(), trying);
		trying.finished();
		if (search || folder != null) {
			ProgressLine searching = new ProgressLine(surroundings, "unnoticed mistakes");
			strength = strength.withTelltales(edition, open.book().jobs(), searching);
			searching.finished();
		}
		if (folder != null) {
			write(strength, open);
		}
		return new StrengthReport(open, strength);
	}

	private void write(Strength strength, OpenBook open) {
		Path absolute = surroundings.folder().resolve(folder);
		try {
			Files.createDirectories(absolute);
			for (Catching catching : Catching.of(strength, open.book().jobs())) {
				AtomicFile.write(absolute.resolve(catching.file()), catching.text(open.catalogue()));
			}
		} catch (IOException e) {
			throw Refusal.couldNotRun("The folder " + absolute + " cannot be written to; check who may write there.");
		} catch (JobNotWritten e) {
			throw Refusal.couldNotRun(e.getMessage());
		}
	}
}
