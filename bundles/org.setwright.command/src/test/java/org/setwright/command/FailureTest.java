package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.command.terminal.Surroundings;

/** What should never happen, and what happens then. */
class FailureTest {
	private static final String SENTENCE = "setwright: Something went wrong that should not have, and nothing was changed.";
	@TempDir
	Path folder;

	@Test
	void isOneSentenceAndTheRestIsInTheLog() throws IOException {
		Typed typed = withoutCatalogue().type("words");
		assertEquals(3, typed.exit());
		assertEquals(SENTENCE + " The details are in " + folder.resolve("setwright.log") + ".\n", typed.err());
		assertEquals("", typed.out());
		assertTrue(Files.readString(folder.resolve("setwright.log")).contains("NullPointerException"));
	}

	@Test
	void showsEverythingWhenAsked() {
		assertTrue(withoutCatalogue().type("words", "--debug").err().contains("\tat org.setwright.command"));
	}

	@Test
	void saysSoWhenTheLogCannotBeWritten() throws IOException {
		Files.createDirectory(folder.resolve("setwright.log"));
		Typed typed = withoutCatalogue().type("words");
		assertTrue(typed.err().startsWith(SENTENCE) && typed.err().contains("could not be written; run it again with --debug"), typed.err());
		assertFalse(typed.err().contains("\tat "), typed.err());
	}

	@Test
	void aFullDiskIsToldAndAReaderWhoHasEnoughIsNot() {
		assertEquals("setwright: The answer could not be written out (No space left on device).\n", whenWritingFails("No space left on device", 3));
		assertEquals("", whenWritingFails("Broken pipe", 0));
	}

	private Typed.At withoutCatalogue() {
		return new Typed.At(null, folder, folder, 80, false, true);
	}

	private String whenWritingFails(String reason, int exit) {
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		OutputStream out = new OutputStream() {
			@Override
			public void write(int b) throws IOException {
				throw new IOException(reason);
			}
		};
		Surroundings at = new Surroundings(out, new PrintStream(err, true, StandardCharsets.UTF_8), Sample.CATALOGUE, folder, folder,
				folder.resolve("log"), "setwright", 80, false, true);
		assertEquals(exit, Main.run(at, "words"));
		return err.toString(StandardCharsets.UTF_8);
	}
}
