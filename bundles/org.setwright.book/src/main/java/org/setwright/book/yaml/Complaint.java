package org.setwright.book.yaml;

import org.setwright.book.yaml.YamlText.Fault;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Says what the parser objects to in words of a job file. */
final class Complaint {
	private static final String QUOTE_IT = "Put the whole value in quotes, for example notes: \"asked: fan on\".";
	private final Offsets offsets;

	private Complaint(Offsets offsets) {
		this.offsets = offsets;
	}

	/**
	 * @param thrown by the parser
	 * @param open the offset of the innermost brace or bracket not closed by then; -1 when there is none
	 * @return what it means for the person who wrote the file
	 */
	static Fault of(RuntimeException thrown, Offsets offsets, int open) {
		Complaint complaint = new Complaint(offsets);
		if (thrown instanceof ReaderException unreadable) {
			return new Fault(offsets.of(unreadable.getPosition()),
					"A character that cannot be shown stands here (code " + unreadable.getCodePoint() + ").",
					"Delete it and write the value anew.");
		} else if (thrown instanceof MarkedYamlEngineException marked) {
			return complaint.said(marked, open);
		}
		return new Fault(offsets.lastVisible(), "The text cannot be read as names and values.",
				"Check quotes, braces and brackets: each one opened has to be closed.");
	}

	private Fault said(MarkedYamlEngineException marked, int open) {
		String problem = marked.getProblem() == null ? "" : marked.getProblem();
		String context = marked.getContext() == null ? "" : marked.getContext();
		int at = place(marked.getProblemMark().or(marked::getContextMark).orElse(null));
		int began = place(marked.getContextMark().or(marked::getProblemMark).orElse(null));
		if (context.contains("quoted scalar")) {
			return quoted(problem, began, at);
		} else if (open >= 0 && at > offsets.lastVisible()) {
			return new Fault(open, "The \"" + offsets.at(open) + "\" opened here is not closed.",
					"Add \"" + closing(open) + "\" where it ends.");
		} else if (problem.contains("(TAB)") || offsets.at(at) == '\t') {
			return new Fault(at, "A tab stands where only blanks may.", "Indent with blanks instead of tabs.");
		} else if (context.contains("flow mapping") || context.contains("flow sequence")) {
			return new Fault(at, "A comma or \"" + closing(began) + "\" is expected here.",
					"Separate the entries by commas, close with \"" + closing(began) + "\", and put values that hold commas in quotes.");
		}
		return arranged(problem, context, context.contains("simple key") ? began : at);
	}

	private char closing(int open) {
		return offsets.at(open) == '{' ? '}' : ']';
	}

	private Fault quoted(String problem, int began, int at) {
		boolean escape = problem.contains("escape") || problem.contains("hexadecimal");
		return escape
				? new Fault(offsets.at(at - 1) == '\\' ? at - 1 : at,
						"A backslash between double quotes begins a code, and this is not one.",
						"Write two backslashes, or use single quotes.")
				: new Fault(began, "The quote opened here is not closed.", "Add the closing quote at the end of the value.");
	}

	private Fault arranged(String problem, String context, int at) {
		if (problem.contains("mapping values are not allowed")) {
			return colon(at);
		} else if (problem.contains("could not find expected ':'") || context.contains("simple key")) {
			return new Fault(at, "A name without a colon and a value.",
					"Write a colon and a blank after the name, for example \"maker: Norrvik\".");
		} else if (problem.contains("cannot start any token")) {
			return new Fault(at, "A value cannot begin with \"" + offsets.at(at) + "\".", QUOTE_IT);
		} else if (problem.contains("sequence entries are not allowed")) {
			return new Fault(at, "A dash for a list stands where no list can begin.",
					"Begin the list on the line after its name, each item with a dash.");
		} else if (context.contains("block mapping") || context.contains("block collection")) {
			return outOfLine(at);
		}
		return new Fault(at, "The text cannot be read from here on.",
				"Check the indent, and put values that begin with a sign in quotes.");
	}

	private Fault colon(int at) {
		return offsets.lineBefore(at).contains(": ") ? new Fault(at, "A second colon stands on this line.", QUOTE_IT)
				: new Fault(at, "This line is indented too far for a name and its value.",
						"Give it the same indent as the names it belongs to.");
	}

	private Fault outOfLine(int at) {
		if (offsets.at(at) == '}' || offsets.at(at) == ']') {
			return new Fault(at, "A \"" + offsets.at(at) + "\" stands here that nothing opened.", "Remove it, or put the whole value in quotes.");
		} else if (!offsets.lineBefore(at).isBlank()) {
			return new Fault(at, "Something follows here after the end of a value.",
					"Put the whole value in quotes, or begin a new line.");
		}
		return new Fault(at, "This line does not line up with the lines above it.",
				"Give it the same indent as the entries it belongs to.");
	}

	private int place(Mark mark) {
		return mark == null ? offsets.lastVisible() : offsets.of(mark.getIndex());
	}
}
