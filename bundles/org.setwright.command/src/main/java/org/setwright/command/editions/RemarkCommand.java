package org.setwright.command.editions;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.Named;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.About;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remark;
import org.setwright.editions.signing.Remarks;
import org.setwright.trade.catalogue.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a remark, or lists them. */
@Command(name = "remark",
		description = "Show the remarks, or make one: on a rule, on what a job comes to, or on the book. A remark is a text file that is kept "
				+ "with the book.")
public final class RemarkCommand extends EditionsQuestion {
	@Parameters(index = "0", arity = "0..1", paramLabel = "TEXT", description = "What to say; the remarks are listed when left out.")
	private String text;
	@Option(names = "--rule", paramLabel = "RULE", description = "On this rule.")
	private String rule;
	@Option(names = "--job", paramLabel = "JOB", description = "On what this job comes to, with --setting.")
	private String job;
	@Option(names = "--setting", paramLabel = "SETTING", description = "The setting that is meant.")
	private String setting;
	@Option(names = "--on", paramLabel = "MATTER", description = "In answer to what was said on this matter, as listed.")
	private String matter;
	@Option(names = "--settles", description = "The matter is settled by it.")
	private boolean settles;

	/** @param surroundings where the program runs */
	public RemarkCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		List<Matter> matters = Remarks.in(editions.inHand().content());
		String last = "";
		if (text != null) {
			if (text.isBlank()) {
				throw Refusal.wrongUsage("Say something, in quotes.");
			}
			Optional<Matter> on = matter == null ? Optional.empty() : Optional.of(Named.one("matter", matter, matters, Matter::thread));
			Remark made = Remarks.write(editions.repo().folder(), on.map(Matter::thread), on.isPresent() ? on.get().about() : about(book, editions),
					editions.last().map(k -> k.id().shown()).orElse(""), editions.repo().user(), OffsetDateTime.now(), settles ? Remark.Stand.SETTLED
							: Remark.Stand.OPEN, text, matters);
			matters = Remarks.in(editions.inHand().content()).stream().filter(m -> m.thread().equals(made.thread())).toList();
			last = "Written into " + made.file() + "; it goes with the next edition that is kept.";
		}
		long open = matters.stream().filter(Matter::open).count();
		return Told.fine("remark", book, book.name() + ": " + (matters.isEmpty() ? "no remarks" : Problems.counted(matters.size(), "matter") + ", " + open
				+ " open"),
				"remarks", MatterItems.COLUMNS, MatterItems.of(matters), last);
	}

	private About about(Book book, EditionsOf editions) throws NotDone {
		if (rule != null) {
			return new About.OfRule(Words.rule(editions.inHand(), rule).name());
		} else if ((job == null) != (setting == null)) {
			throw Refusal.wrongUsage("Name a job with --job and its setting with --setting.");
		} else if (job == null) {
			return new About.OfBook();
		}
		JobCase named = Named.one("job", job, book.jobs(), JobCase::name, JobCase::path, OpenBook::shortName);
		return new About.OfDecision(named.path(), Named.one("setting", setting, at().catalogue().settings(), Setting::label, Setting::id).label());
	}
}
