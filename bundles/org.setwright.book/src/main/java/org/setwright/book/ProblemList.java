package org.setwright.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode.Scalar;

/** Collects what is wrong with one file. */
final class ProblemList {
	/** More than these are not listed for one file. */
	static final int MOST = 100;
	private final String path;
	private final SourceText source;
	private final List<Problem> problems = new ArrayList<>();
	private int leftOut;

	ProblemList(String path, SourceText source) {
		this.path = path;
		this.source = source;
	}

	Position at(int offset) {
		return new Position(path, source.line(offset), source.column(offset));
	}

	void error(int offset, String what, String remedy) {
		add(Problem.error(at(offset), what, remedy));
	}

	/** An error that writing any of {@code instead} in place of {@code written} would mend. */
	void error(Scalar written, String what, String remedy, List<String> instead) {
		add(Problem.error(at(written.start()), what, remedy).instead(source.text().substring(written.start(), written.end()), instead));
	}

	/** @return whether {@code value} runs over several lines, after reporting it */
	boolean refusedLines(Scalar value, String label) {
		boolean lines = source.line(value.start()) != source.line(value.end());
		if (lines) {
			error(value.start(), "The value of " + label + " runs on to the next line.",
					"Write it on one line, and line up the next name or dash with those above.");
		}
		return lines;
	}

	void warning(int offset, String what, String remedy) {
		add(Problem.warning(at(offset), what, remedy));
	}

	/** A fault of the file that stands at no one line. */
	void errorInFile(String what, String remedy) {
		add(Problem.error(Position.whole(path), what, remedy));
	}

	void warningInFile(String what, String remedy) {
		add(Problem.warning(Position.whole(path), what, remedy));
	}

	private void add(Problem problem) {
		if (problems.size() < MOST) {
			problems.add(problem);
		} else {
			leftOut++;
		}
	}

	/** @return all, by position */
	List<Problem> all() {
		List<Problem> sorted = new ArrayList<>(problems);
		sorted.sort(Comparator.comparing(Problem::at));
		if (leftOut > 0) {
			sorted.add(Problem.error(Position.whole(path), leftOut + " more problems in this file are not listed.",
					"Mend those listed first."));
		}
		return sorted;
	}
}
