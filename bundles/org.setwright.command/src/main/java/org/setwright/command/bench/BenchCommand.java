package org.setwright.command.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.setwright.bench.Script;
import org.setwright.bench.hand.Ground;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.change.Watch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The trial bench: line by line at a terminal; all lines at once from a file or a pipe. */
@Command(name = "bench", description = "Try facts and rules line by line, and ask what comes of them; nothing touches the book until it is kept.",
		footer = { "", "At a terminal, type \"words\" to see what can be said there. Lines that are piped to it, or stand in a script,",
				"are followed up to the first that cannot be; the exit code is 1 then, or when something they expect is not met." })
public final class BenchCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(index = "0", arity = "0..1", paramLabel = "JOB",
			description = "The job to begin with: its name or file, or a part of it; with nothing known when left out.")
	private String job;
	@Option(names = "--script", paramLabel = "FILE", description = "Follow the lines of a file instead of what is typed.")
	private Path script;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public BenchCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() throws IOException {
		OpenBook open = book.open();
		Optional<Edition> edition = open.compilation().edition();
		if (edition.isEmpty()) {
			return delivery.deliver(new CheckReport(open));
		}
		Optional<JobCase> saved = Optional.ofNullable(job).map(open::job);
		Talk talk = new Talk(new Ground(open.book(), edition.get(), saved), surroundings.folder());
		if (script == null && surroundings.keyboard().terminal()) {
			return new AtTerminal(surroundings, talk).begin();
		}
		return delivery.deliver(followed(open, talk, Script.lines(text())));
	}

	private String text() throws IOException {
		if (script == null) {
			return new String(surroundings.keyboard().lines().readAllBytes(), StandardCharsets.UTF_8);
		}
		Path file = surroundings.folder().resolve(script);
		try {
			return Files.readString(file, StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw Refusal.couldNotRun("The script " + file + " cannot be read; check its name and that it is text in UTF-8.");
		}
	}

	private static Report followed(OpenBook open, Talk talk, List<String> lines) {
		JobCase first = talk.session().hand().job();
		List<Exchange> told = new ArrayList<>();
		int followed = 0;
		while (followed < lines.size() && !talk.over() && (told.isEmpty() || !told.get(told.size() - 1).failed())) {
			told.addAll(talk.say(lines.get(followed++), Watch.PATIENT));
		}
		boolean failed = !told.isEmpty() && told.get(told.size() - 1).failed();
		return new BenchReport(open, first, told, failed ? lines.size() - followed : 0, talk.expectedIsMet());
	}
}
