package org.setwright.command.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.setwright.command.terminal.Page;

/** The answer to one word, ready to be printed in any form. Prints what it holds and works out nothing. */
public interface Report {
	/** The version of the JSON and CSV shapes that OUTPUT.md describes; it grows when a field goes or changes. */
	int SHAPE = 1;

	/** @return the word it answers */
	String word();

	/** @return one of {@link ExitCode} */
	int exitCode();

	/** Lays it out for people. */
	void text(Page page);

	/** Writes the fields of the JSON answer; the object around them is open already. */
	void json(JsonGenerator json) throws IOException;

	/** @return the answer as a picture; refuses when there is none */
	default String svg() {
		throw Refusal.wrongUsage("Only why can be drawn, and one setting at a time: why JOB SETTING --as svg.");
	}

	/** @return the rows of the CSV answer, the header first; every row has as many cells; a cell is never null */
	List<List<String>> csv();
}
