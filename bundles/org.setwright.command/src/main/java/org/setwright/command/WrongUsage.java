package org.setwright.command;

import java.util.Optional;
import org.setwright.book.Nearest;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Words that make no sense, and what was probably meant. */
record WrongUsage(Surroundings at) {

	/** @return the exit code */
	int tell(ParameterException e) {
		String sentence = e instanceof UnmatchedArgumentException unmatched ? unmatched(unmatched) : e.getMessage();
		String help = e.getCommandLine().getCommandSpec().qualifiedName(" ") + " --help";
		at.err().println(at.name() + ": " + sentence + " Type \"" + help + "\" to see what can be said.");
		return ExitCode.WRONG_USAGE;
	}

	private static String unmatched(UnmatchedArgumentException e) {
		String written = e.getUnmatched().get(0);
		CommandLine line = e.getCommandLine();
		if (written.startsWith("-")) {
			return "There is no option " + written + " here." + meant(Nearest.to(written, line.getCommandSpec().optionsMap().keySet()));
		}
		return line.getSubcommands().isEmpty() ? "\"" + written + "\" is one word too many; put names with blanks in quotes."
				: "There is no word \"" + written + "\"." + meant(Nearest.to(written, line.getSubcommands().keySet()));
	}

	private static String meant(Optional<String> nearest) {
		return nearest.map(n -> " Is " + n + " meant?").orElse("");
	}
}
