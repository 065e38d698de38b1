package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.Named;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.impact.Cause;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.since.Origin;
import org.setwright.editions.since.Since;
import org.setwright.trade.catalogue.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells since when a job comes to a value. */
@Command(name = "since",
		description = "Show since which edition, and by which change, a job comes to what it does; with the answers the job has now.")
public final class SinceCommand extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("job", "setting", "value", "edition", "on", "by", "title", "reason", "before", "causes");

	@Parameters(index = "0", paramLabel = "JOB", description = "The job's name or file, or a part of it.")
	private String job;
	@Parameters(index = "1", paramLabel = "SETTING", description = "The setting's name, or a part of it.")
	private String setting;

	/** @param surroundings where the program runs */
	public SinceCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		JobCase asked = Named.one("job", job, book.jobs(), JobCase::name, JobCase::path, OpenBook::shortName);
		Setting wanted = Named.one("setting", setting, book.catalogue().settings(), Setting::label, Setting::id);
		Since since = editions.since(asked, wanted);
		List<Item> items = new ArrayList<>();
		for (Origin origin : since.origins()) {
			Item item = Words.item(origin.edition()).with("job", asked.name(), "setting", wanted.label(), "value", since.value(), "before",
					origin.valueBefore(),
					"causes", origin.causes().stream().map(Cause::shown).collect(Collectors.joining(" or ")));
			item.line(2, Style.STRONG, "since edition " + origin.edition().shown() + ": " + origin.edition().title());
			if (origin.before().isPresent()) {
				item.line(6, Style.PLAIN, "before that: " + origin.valueBefore());
				ChangeItems.causes(origin.causes()).forEach(c -> item.line(6, Style.PLAIN, c));
			} else {
				item.line(6, Style.PLAIN, "the first edition that can be run says so already");
			}
			items.add(item);
		}
		String last = since.passedOver().isEmpty() ? "" : "Passed over, because they have errors: "
				+ since.passedOver().stream().map(k -> k.id().shown()).collect(Collectors.joining(", ")) + ". ";
		List<Kept> later = new ArrayList<>(editions.history(asked.path()));
		List<Kept> all = editions.history();
		later.removeIf(k -> since.origins().stream().noneMatch(o -> all.indexOf(k) < all.indexOf(o.edition())));
		last += later.isEmpty() ? "" : "The job's own file changed later, in edition " + later.get(0).shown() + "; asked was with the answers it has now.";
		return Told.fine("since", book, asked.name() + ": " + wanted.label() + " is " + since.value(), "origins", COLUMNS, items, last);
	}
}
