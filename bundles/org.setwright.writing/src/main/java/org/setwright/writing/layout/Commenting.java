package org.setwright.writing.layout;

import java.util.ArrayList;
import java.util.List;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.TextEdit;

/** Takes lines out of use by making them comments, and puts them back. */
public final class Commenting {
	private static final String SIGN = "//";

	private Commenting() {
	}

	/**
	 * @param from offset where the selection begins
	 * @param to offset where it ends; a selection that ends at the very start of a line does not touch that line
	 * @return what makes comments of the lines; when all of them are comments already, what makes them rules again
	 */
	public static List<TextEdit> toggled(String text, int from, int to) {
		List<Integer> lines = new ArrayList<>();
		int last = to > from && to > 0 && text.charAt(to - 1) == '\n' ? to - 1 : to;
		for (int line = Lines.startAt(text, from); line <= last; line = Lines.next(text, line)) {
			if (!text.substring(line, Lines.end(text, line)).isBlank()) {
				lines.add(line + Lines.indent(text, line).length());
			}
			if (Lines.next(text, line) == text.length() && !text.endsWith("\n") || Lines.next(text, line) == line) {
				break;
			}
		}
		boolean back = !lines.isEmpty() && lines.stream().allMatch(at -> text.startsWith(SIGN, at));
		return lines.stream().map(at -> back
				? new TextEdit(at, at + (text.startsWith(SIGN + " ", at) ? 3 : 2), "") : TextEdit.insert(at, SIGN + " ")).toList();
	}
}
