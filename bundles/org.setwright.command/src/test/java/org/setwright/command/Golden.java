package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Answers as they were accepted, in src/test/resources/golden. To accept new ones, run the tests with
 * {@code -Dgolden.accept=yes} and read the difference before it is committed.
 */
final class Golden {
	private static final Path ACCEPTED = Path.of("src/test/resources/golden");
	private static final boolean ACCEPT = "yes".equals(System.getProperty("golden.accept"));

	private Golden() {
	}

	/** Demands that {@code answer} is the accepted one in file {@code name}. The folder of the sample books reads BOOKS. */
	static void check(String name, String answer) throws IOException {
		String portable = answer.replace(Path.of("src/test/resources/books").toAbsolutePath().toString(), "BOOKS");
		Path file = ACCEPTED.resolve(name);
		if (ACCEPT) {
			Files.createDirectories(ACCEPTED);
			Files.writeString(file, portable);
		} else if (!Files.exists(file)) {
			fail(file + " is missing; run with -Dgolden.accept=yes to write it, then read it");
		}
		assertEquals(Files.readString(file), portable, "not as accepted in " + file + "; -Dgolden.accept=yes accepts it");
	}
}
