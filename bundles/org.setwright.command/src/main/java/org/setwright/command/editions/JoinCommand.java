package org.setwright.command.editions;

import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Joins another line of work to the open one. */
@Command(name = "join",
		description = "Join another line of work to the open one, rule by rule. What both changed is shown, and nothing is joined before it is decided.")
public final class JoinCommand extends JoiningQuestion {
	@Parameters(index = "0", paramLabel = "LINE", description = "The line to join, as trial lists it.")
	private String line;

	/** @param surroundings where the program runs */
	public JoinCommand(Surroundings surroundings) {
		super(surroundings, "join");
	}

	@Override
	protected JoinPlan plan(EditionsOf editions) throws NotDone {
		return editions.lines().join(line);
	}
}
