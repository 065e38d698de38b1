package org.setwright.command.reading;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.explaining.ReadAloud;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads rules and rows of tables aloud. */
@Command(name = "read", description = "Read rules and rows of tables as plain English, as somebody would say them.")
public final class ReadCommand implements Callable<Integer> {
	@Parameters(arity = "0..1", paramLabel = "RULE", description = "A rule's name, or a part of it; every rule when left out.")
	private String rule;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public ReadCommand(Surroundings surroundings) {
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(edition -> new ReadReport(open, read(open, edition)))
				.orElseGet(() -> new CheckReport(open)));
	}

	/** All rules whose name has these words in it; a name that no rule has is refused with the nearest one. */
	private List<ReadAloud> read(OpenBook open, Edition edition) {
		String part = rule == null ? "" : rule.strip().toLowerCase(Locale.ROOT);
		List<ReadAloud> read = edition.rules().stream().filter(r -> r.name().toLowerCase(Locale.ROOT).contains(part)).map(ReadAloud::of).toList();
		return read.isEmpty() && rule != null ? List.of(ReadAloud.of(open.rule(rule, edition))) : read;
	}
}
