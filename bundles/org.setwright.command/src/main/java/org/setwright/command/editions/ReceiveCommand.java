package org.setwright.command.editions;

import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.git.Login;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gets what is new at another place and joins it. */
@Command(name = "receive", description = "Get what is new at another place, and join the same line there to the open one, as join does.")
public final class ReceiveCommand extends JoiningQuestion {
	@Parameters(index = "0", arity = "0..1", paramLabel = "PLACE", defaultValue = "origin", description = "The place; origin when left out.")
	private String place;
	@Option(names = "--address", paramLabel = "ADDRESS", description = "Note PLACE first: a folder, or an address of SSH or HTTPS.")
	private String address;

	/** @param surroundings where the program runs */
	public ReceiveCommand(Surroundings surroundings) {
		super(surroundings, "receive");
	}

	@Override
	protected JoinPlan plan(EditionsOf editions) throws NotDone {
		if (address != null) {
			editions.lines().addPlace(place, address);
		}
		return editions.lines().receive(place, Login.Asking.NOBODY);
	}
}
