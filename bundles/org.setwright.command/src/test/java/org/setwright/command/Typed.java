package org.setwright.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.setwright.command.terminal.Surroundings;

/** Types words at the program and keeps what it answers. @param exit the exit code @param out the answer @param err refusals */
record Typed(int exit, String out, String err) {

	/** Where the words are typed; change one thing with the methods. */
	record At(Path folder, Path starter, int columns, boolean colour, boolean accents) {

		At folder(Path other) {
			return new At(other, starter, columns, colour, accents);
		}

		At columns(int other) {
			return new At(folder, starter, other, colour, accents);
		}

		At inColour() {
			return new At(folder, starter, columns, true, accents);
		}

		At inAsciiOnly() {
			return new At(folder, starter, columns, colour, false);
		}

		Typed type(String... words) {
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			ByteArrayOutputStream err = new ByteArrayOutputStream();
			Surroundings at = new Surroundings(utf8(out), utf8(err), folder.toAbsolutePath(), starter.toAbsolutePath(),
					folder.toAbsolutePath().resolve("setwright.log"), "setwright", columns, colour, accents);
			int exit = Main.run(at, words);
			return new Typed(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
		}
	}

	/** @return a place 80 characters wide without colour, in {@code folder} */
	static At in(Path folder) {
		return new At(folder, folder.resolve("no-starter"), 80, false, true);
	}

	private static PrintStream utf8(ByteArrayOutputStream bytes) {
		return new PrintStream(bytes, true, StandardCharsets.UTF_8);
	}
}
