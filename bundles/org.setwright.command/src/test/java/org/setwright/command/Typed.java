package org.setwright.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.setwright.command.terminal.Surroundings;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/** Types words at the program and keeps what it answers. @param exit the exit code @param out the answer @param err refusals */
record Typed(int exit, String out, String err) {

	/** Where the words are typed; change one thing with the methods. */
	record At(Catalogue catalogue, Path folder, Path starter, int columns, boolean colour, boolean accents) {

		At folder(Path other) {
			return new At(catalogue, other, starter, columns, colour, accents);
		}

		At columns(int other) {
			return new At(catalogue, folder, starter, other, colour, accents);
		}

		At inColour() {
			return new At(catalogue, folder, starter, columns, true, accents);
		}

		At inAsciiOnly() {
			return new At(catalogue, folder, starter, columns, colour, false);
		}

		Typed type(String... words) {
			Path log = folder.startsWith("src") ? Path.of("target/setwright.log") : folder.resolve("setwright.log");
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			ByteArrayOutputStream err = new ByteArrayOutputStream();
			Surroundings at = new Surroundings(utf8(out), utf8(err), catalogue, folder.toAbsolutePath(), starter.toAbsolutePath(),
					log, "setwright", columns, colour, accents);
			int exit = Main.run(at, words);
			return new Typed(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
		}
	}

	/** @return a place 80 characters wide without colour, in {@code folder} */
	static At in(Path folder) {
		return new At(Trade.catalogue(), folder, folder.resolve("no-starter"), 80, false, true);
	}

	/**
	 * @return a place 80 characters wide without colour, in the sample book {@code name}, with the sample catalogue; with
	 *         the trade's own for "walls"
	 */
	static At inSampleBook(String name) {
		return new At(name.equals("walls") ? Trade.catalogue() : Sample.CATALOGUE, Path.of("src/test/resources/books", name), Path.of("no-starter"), 80, false, true);
	}

	private static PrintStream utf8(ByteArrayOutputStream bytes) {
		return new PrintStream(bytes, true, StandardCharsets.UTF_8);
	}
}
