package org.setwright.writing.fix;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.TextEdit;

/** Takes out lines of the wider language that say nothing in a rule book. */
final class Needless {
	private static final Pattern LINE = Pattern.compile("\\s*(package|import|global|dialect|salience|agenda-group|activation-group|no-loop"
			+ "|lock-on-active|auto-focus|enabled|date-effective|date-expires)\\b[^@()]*");

	private Needless() {
	}

	/** @return what deletes the line of {@code at}, when it is one of those */
	static Optional<Fix> line(String path, String text, int at) {
		int start = Lines.startAt(text, at);
		boolean needless = LINE.matcher(text.substring(start, Lines.end(text, at))).matches();
		return needless ? Optional.of(Fix.in(path, "Delete this line",
				"Rules need no such line: they know every fact and setting, and their order does not matter.", List.of(new TextEdit(start, Lines.next(text, at), "")), -1)) : Optional.empty();
	}
}
