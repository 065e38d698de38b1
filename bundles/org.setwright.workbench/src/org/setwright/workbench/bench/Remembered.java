package org.setwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines typed before, to be called back one by one. */
final class Remembered {
	static final int MOST = 200;
	private final List<String> lines = new ArrayList<>();
	private int at;
	private String begun = ""; //$NON-NLS-1$

	/** @param lines typed at earlier times, the oldest first */
	Remembered(List<String> lines) {
		lines.forEach(this::add);
	}

	/** Remembers {@code line}; the same line twice in a row is remembered once. */
	void add(String line) {
		if (!line.isBlank() && (lines.isEmpty() || !lines.get(lines.size() - 1).equals(line))) {
			lines.add(line);
		}
		if (lines.size() > MOST) {
			lines.remove(0);
		}
		at = lines.size();
		begun = ""; //$NON-NLS-1$
	}

	/** @param now what stands in the input @return the line before, or empty at the oldest */
	Optional<String> earlier(String now) {
		if (at == 0) {
			return Optional.empty();
		}
		begun = at == lines.size() ? now : begun;
		return Optional.of(lines.get(--at));
	}

	/** @return the line after, at last what had been begun; empty where there is nothing after */
	Optional<String> later() {
		if (at >= lines.size()) {
			return Optional.empty();
		}
		return Optional.of(++at == lines.size() ? begun : lines.get(at));
	}

	/** @return all, the oldest first */
	List<String> all() {
		return List.copyOf(lines);
	}
}
