package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.git.Login;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sends the open line and the sign-offs to another place. */
@Command(name = "send", description = "Send the open line and all sign-offs to another place. What is there is never replaced.")
public final class SendCommand extends EditionsQuestion {
	@Parameters(index = "0", arity = "0..1", paramLabel = "PLACE", defaultValue = "origin", description = "The place; origin when left out.")
	private String place;
	@Option(names = "--address", paramLabel = "ADDRESS", description = "Note PLACE first: a folder, or an address of SSH or HTTPS.")
	private String address;

	/** @param surroundings where the program runs */
	public SendCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		if (address != null) {
			editions.lines().addPlace(place, address);
		}
		boolean news = editions.lines().send(place, Login.Asking.NOBODY);
		List<Item> items = new ArrayList<>();
		editions.lines().places().forEach((name, where) -> items.add(new Item()
				.with("place", name, "address", where, "sent", name.equals(place) && news ? "yes" : "no")
				.line(2, Style.PLAIN, name + "  " + where)));
		return Told.fine("send", book, book.name() + ": other places", "places", List.of("place", "address", "sent"), items,
				news ? "Sent to " + place + "." : place + " had everything already.");
	}
}
