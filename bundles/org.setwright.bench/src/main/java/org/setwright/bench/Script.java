package org.setwright.bench;

import java.util.ArrayList;
import java.util.List;

/** Lines from a file or a pipe. */
public final class Script {
	private Script() {
	}

	/** @return what is to be said one after the other: a line, or all lines of a rule; blank lines and remarks left out */
	public static List<String> lines(String text) {
		List<String> said = new ArrayList<>();
		StringBuilder sofar = new StringBuilder();
		for (String line : text.lines().toList()) {
			sofar.append(sofar.isEmpty() ? "" : "\n").append(line);
			if (!Session.unfinished(sofar.toString())) {
				add(sofar, said);
			}
		}
		add(sofar, said);
		return said;
	}

	private static void add(StringBuilder sofar, List<String> said) {
		String line = sofar.toString();
		if (!line.isBlank() && !line.stripLeading().startsWith("#")) {
			said.add(line);
		}
		sofar.setLength(0);
	}
}
