package org.setwright.command.terminal;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Map;

/**
 * What is typed while the program runs.
 *
 * @param lines what is piped to it; not read where somebody types at a terminal
 * @param terminal whether somebody types at a terminal and reads the answers there
 * @param history where the lines of earlier times are kept, a file of the user's own; need not exist
 */
public record Keyboard(InputStream lines, boolean terminal, Path history) {
	/** Nothing is typed. */
	static final Keyboard NONE = new Keyboard(InputStream.nullInputStream(), false, Path.of("setwright-bench-lines"));
	private static final String FILE = "bench-lines";

	static Keyboard ofProcess(Map<String, String> environment) {
		return new Keyboard(System.in, Surroundings.said("setwright.typing", System.console() != null), state(environment).resolve("setwright").resolve(FILE));
	}

	/** The folder in which programs keep what they remember for a user, by the customs of the system. */
	private static Path state(Map<String, String> environment) {
		String stated = environment.getOrDefault("XDG_STATE_HOME", environment.getOrDefault("LOCALAPPDATA", ""));
		return stated.isBlank() ? Path.of(System.getProperty("user.home", "."), ".local", "state") : Path.of(stated);
	}
}
