package org.setwright.command.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.setwright.book.AtomicFile;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.check.cases.Accepting;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.trade.catalogue.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes what a job comes to now for what is expected of it, and notes who said so. */
@Command(name = "accept", description = "Take what a job comes to now for right: it becomes what the job expects, and the job's file tells who accepted it, when and why.")
public final class AcceptCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(index = "0", paramLabel = "JOB", description = "The job's name or file, or a part of it.")
	private String job;
	@Parameters(index = "1", arity = "0..1", paramLabel = "SETTING",
			description = "The setting's name, or a part of it; everything that is not met when left out.")
	private String setting;
	@Option(names = "--by", paramLabel = "NAME", required = true, description = "Who accepts it.")
	private String by;
	@Option(names = "--because", paramLabel = "TEXT", required = true, description = "Why it is right, in a sentence.")
	private String because;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public AcceptCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		if (by.isBlank() || because.isBlank()) {
			throw Refusal.wrongUsage("Say who accepts it with --by, and why with --because.");
		}
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(e -> accepted(open, e)).orElseGet(() -> new CheckReport(open)));
	}

	private AcceptReport accepted(OpenBook open, Edition edition) {
		JobCase jobCase = open.job(job);
		CheckedJob checked = CheckedJob.of(jobCase, edition.run(jobCase.job()));
		List<Point> points = setting == null ? checked.notMet() : List.of(point(checked, open.setting(setting)));
		Accepting accepting = new Accepting(LocalDate.now(), by, because);
		List<JobEdit> edits = points.stream().flatMap(p -> accepting.edits(p).stream()).toList();
		write(open, jobCase, edits);
		List<Point> changed = new ArrayList<>(points);
		changed.removeIf(Point::met);
		return new AcceptReport(surroundings, open, jobCase, changed);
	}

	private static Point point(CheckedJob checked, Setting wanted) {
		return CheckedJob.of(checked.job(), wanted, checked.outcome().orElseThrow().setting(wanted));
	}

	private void write(OpenBook open, JobCase jobCase, List<JobEdit> edits) {
		Path file = open.book().folder().resolve(jobCase.path());
		try {
			String text = Files.readString(file, StandardCharsets.UTF_8);
			String edited = new JobWriter(open.catalogue()).editAll(jobCase.path(), text, edits);
			if (!edited.equals(text)) {
				AtomicFile.write(file, edited);
			}
		} catch (JobNotWritten refused) {
			throw Refusal.couldNotRun(refused.problem() + " Nothing was changed.");
		} catch (IOException e) {
			throw Refusal.couldNotRun("The file " + file + " cannot be written; check who may write there. Nothing was changed.");
		}
	}
}
