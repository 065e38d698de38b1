package org.setwright.book.yaml;

import org.setwright.book.yaml.YamlText.Fault;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Says what the parser objects to in words of a job file. */
final class Complaint {
	private static final String QUOTE_IT = "Put the whole value in quotes, for example notes: \"asked: fan on\".";

	private Complaint() {
	}

	/** @return what {@code thrown} (by the parser) means for the person who wrote the file */
	static Fault of(RuntimeException thrown, Offsets offsets) {
		if (thrown instanceof ReaderException unreadable) {
			return new Fault(offsets.of(unreadable.getPosition()),
					"A character that cannot be shown stands here (code " + unreadable.getCodePoint() + ").",
					"Delete it and write the value anew.");
		} else if (thrown instanceof MarkedYamlEngineException marked) {
			return said(marked, offsets);
		}
		return new Fault(offsets.lastVisible(), "The text cannot be read as names and values.",
				"Check quotes, braces and brackets: each one opened has to be closed.");
	}

	private static Fault said(MarkedYamlEngineException marked, Offsets offsets) {
		String problem = marked.getProblem() == null ? "" : marked.getProblem();
		String context = marked.getContext() == null ? "" : marked.getContext();
		int at = place(marked.getProblemMark().or(marked::getContextMark).orElse(null), offsets);
		int opened = place(marked.getContextMark().or(marked::getProblemMark).orElse(null), offsets);
		if (context.contains("flow mapping")) {
			return unclosed(opened, at, "{", "}", offsets);
		} else if (context.contains("flow sequence")) {
			return unclosed(opened, at, "[", "]", offsets);
		} else if (context.contains("quoted scalar")) {
			return quoted(problem, opened, at);
		} else if (problem.contains("(TAB)") || offsets.at(at) == '\t') {
			return new Fault(at, "A tab stands where only blanks may.", "Indent with blanks instead of tabs.");
		}
		return arranged(problem, context, at, offsets);
	}

	private static Fault quoted(String problem, int opened, int at) {
		boolean escape = problem.contains("escape") || problem.contains("hexadecimal");
		return escape
				? new Fault(at, "A backslash between double quotes begins a code, and this is not one.",
						"Write two backslashes, or use single quotes.")
				: new Fault(opened, "The quote opened here is not closed.", "Add the closing quote at the end of the value.");
	}

	private static Fault unclosed(int opened, int at, String open, String close, Offsets offsets) {
		boolean ended = at > offsets.lastVisible();
		return ended
				? new Fault(opened, "The \"" + open + "\" opened here is not closed.", "Add \"" + close + "\" where it ends.")
				: new Fault(at, "A comma or \"" + close + "\" is expected here.",
						"Separate the entries by commas, close with \"" + close + "\", and put values that hold commas in quotes.");
	}

	private static Fault arranged(String problem, String context, int at, Offsets offsets) {
		if (problem.contains("mapping values are not allowed")) {
			return new Fault(at, "A colon stands where none is expected, or the line is indented too far.", QUOTE_IT);
		} else if (problem.contains("could not find expected ':'") || context.contains("simple key")) {
			return new Fault(at, "A name without a colon and a value.",
					"Write a colon and a blank after the name, for example \"maker: Norrvik\".");
		} else if (problem.contains("cannot start any token")) {
			return new Fault(at, "A value cannot begin with \"" + offsets.at(at) + "\".", QUOTE_IT);
		} else if (problem.contains("sequence entries are not allowed")) {
			return new Fault(at, "A dash for a list stands where no list can begin.",
					"Begin the list on the line after its name, each item with a dash.");
		} else if (context.contains("block mapping") || context.contains("block collection")) {
			return new Fault(at, "This line does not line up with the lines above it.",
					"Give it the same indent as the entries it belongs to.");
		}
		return new Fault(at, "The text cannot be read from here on.",
				"Check the indent, and put values that begin with a sign in quotes.");
	}

	private static int place(Mark mark, Offsets offsets) {
		return mark == null ? offsets.lastVisible() : offsets.of(mark.getIndex());
	}
}
