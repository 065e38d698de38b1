package org.setwright.command.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.setwright.book.AtomicFile;
import org.setwright.book.Floors.Figure;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.RunTimes;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.fitness.Reached;
import org.setwright.check.report.CasesSection;
import org.setwright.check.report.CoverageSection;
import org.setwright.check.report.HtmlReport;
import org.setwright.check.report.JunitXml;
import org.setwright.check.report.RulesSection;
import org.setwright.check.report.Section;
import org.setwright.check.report.StrengthSection;
import org.setwright.check.strength.Strength;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads and checks a book, and runs its jobs. */
@Command(name = "check", description = "Check every rule, table and job of a rule book, run the jobs, and show what does not come to what is expected.")
public final class CheckCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(paramLabel = "JOB", description = "Run only these jobs, by name or file, or a part of it; every job when left out.")
	private List<String> jobs = List.of();
	@Option(names = "--junit", paramLabel = "FILE", description = "Write the results for a build server, as JUnit XML.")
	private Path junit;
	@Option(names = "--html", paramLabel = "FILE", description = "Write a report to read or print, one file that needs nothing else.")
	private Path html;
	@Option(names = "--strength", description = "Also make small mistakes in the rules on purpose, and look for a job that would notice each one nobody notices; takes a while. The report written by --html lists them.")
	private boolean search;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public CheckCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		if (search && !jobs.isEmpty()) {
			throw Refusal.wrongUsage("--strength looks at the whole book: leave out the names of jobs.");
		}
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(e -> checked(open, e)).orElseGet(() -> new CheckReport(open)));
	}

	private CasesReport checked(OpenBook open, Edition edition) {
		List<JobCase> wanted = jobs.isEmpty() ? open.book().jobs() : jobs.stream().map(open::job).distinct().toList();
		ProgressLine progress = new ProgressLine(surroundings, "jobs");
		RunTimes times = new RunTimes();
		CaseCheck check = CaseCheck.of(edition, wanted, progress, true, times).orElseThrow();
		progress.finished();
		boolean whole = jobs.isEmpty() && (html != null || search || !open.book().floors().shares().isEmpty());
		Optional<Coverage> coverage = whole ? Optional.of(coverage(edition, wanted)) : Optional.empty();
		Optional<Strength> strength = whole && (search || open.book().floors().of(Figure.MISTAKES_CAUGHT).isPresent()) ? Optional.of(strength(edition, wanted)) : Optional.empty();
		List<Reached> reached = coverage.map(c -> Reached.of(open.book().floors(), c, strength)).orElse(List.of());
		if (junit != null) {
			write(junit, JunitXml.of(open.book().name(), check, times));
		}
		if (html != null) {
			List<Section> sections = new ArrayList<>(List.of(new CasesSection(check)));
			coverage.ifPresent(c -> sections.add(new CoverageSection(c, reached)));
			strength.ifPresent(s -> sections.add(new StrengthSection(s, wanted, search)));
			if (whole) {
				sections.add(new RulesSection(edition.rules()));
			}
			write(html, HtmlReport.of(open.book().name(), LocalDateTime.now(), sections));
		}
		return new CasesReport(surroundings, open, check, reached.stream().filter(r -> r.least().isPresent() || search && r.figure() == Figure.MISTAKES_CAUGHT).toList());
	}

	private Coverage coverage(Edition edition, List<JobCase> wanted) {
		ProgressLine progress = new ProgressLine(surroundings, "jobs counted");
		Coverage coverage = Coverage.of(edition, wanted, progress).orElseThrow();
		progress.finished();
		return coverage;
	}

	private Strength strength(Edition edition, List<JobCase> wanted) {
		ProgressLine progress = new ProgressLine(surroundings, "mistakes");
		Strength strength = Strength.of(edition, wanted, progress);
		progress.finished();
		if (search) {
			ProgressLine searching = new ProgressLine(surroundings, "unnoticed mistakes");
			strength = strength.withTelltales(edition, wanted, searching);
			searching.finished();
		}
		return strength;
	}

	private void write(Path file, String text) {
		Path absolute = surroundings.folder().resolve(file);
		try {
			Files.createDirectories(absolute.getParent());
			AtomicFile.write(absolute, text);
		} catch (IOException e) {
			throw Refusal.couldNotRun("The file " + absolute + " cannot be written; check the folder and who may write there.");
		}
	}
}
