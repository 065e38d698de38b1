package org.setwright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Disagreement;

/** An unexpected failure: one sentence for the person, everything else for the log. @param debug whether to show it all */
record Failure(Surroundings at, boolean debug) {

	/** @return the exit code */
	int tell(Throwable cause) {
		StringWriter trace = new StringWriter();
		cause.printStackTrace(new PrintWriter(trace, true));
		String sentence = cause instanceof Disagreement ? cause.getMessage() : "Something went wrong that should not have, and nothing was changed.";
		at.err().println(at.name() + ": " + sentence + " " + logged(trace.toString()));
		if (debug) {
			at.err().print(trace);
		}
		return ExitCode.COULD_NOT_RUN;
	}

	private String logged(String trace) {
		try {
			Files.createDirectories(at.log().toAbsolutePath().getParent());
			Files.writeString(at.log(), Instant.now() + " " + trace + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
			return "The details are in " + at.log() + ".";
		} catch (IOException | RuntimeException unwritable) {
			return "The log " + at.log() + " could not be written; run it again with --debug to see the details.";
		}
	}
}
