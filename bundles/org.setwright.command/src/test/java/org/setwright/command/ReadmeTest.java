package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book that README.md builds, its commands, and what they show, are true. */
class ReadmeTest {
	private static final Path README = Path.of("../../README.md");
	private static final Pattern BLOCK = Pattern.compile("^```(\\w+)(?: (\\S+))?\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);
	private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

	@TempDir
	Path folder;
	private final List<String> commands = new ArrayList<>();
	private String shown = "";
	private int files;

	/** Writes the blocks headed by a file name into the book, and keeps the commands and the last answer. */
	@BeforeEach
	void readTheReadme() throws IOException {
		Matcher block = BLOCK.matcher(Files.readString(README));
		while (block.find()) {
			if (block.group(2) != null) {
				Path file = folder.resolve("our-practice").resolve(block.group(2));
				Files.createDirectories(file.getParent());
				Files.writeString(file, block.group(3));
				files++;
			} else if (block.group(1).equals("sh")) {
				commands.addAll(block.group(3).lines().toList());
			} else if (block.group(1).equals("text")) {
				shown = block.group(3);
			}
		}
	}

	@Test
	void itsBookRunsAndComesToWhatItsJobExpects() {
		assertTrue(files >= 4 && commands.size() >= 3, "the README has no samples any more");
		for (String command : commands) {
			Typed typed = type(command);
			assertEquals(0, typed.exit(), command + "\n" + typed.out() + typed.err());
		}
	}

	@Test
	void theLastAnswerIsAsShown() {
		assertEquals(shown, type(commands.get(commands.size() - 1)).out());
	}

	@Test
	void everyWordInItsTableExists() throws IOException {
		Matcher row = Pattern.compile("^\\| `./setwright (\\w+)", Pattern.MULTILINE).matcher(Files.readString(README));
		List<String> words = row.results().map(m -> m.group(1)).filter(w -> !w.equals("open")).distinct().toList();
		assertEquals(List.of("jobs", "setup", "landing", "startup", "why", "silent", "instead", "matters", "apart", "read", "check", "accept", "coverage",
				"strength", "import", "export", "editions", "keep", "changes", "answers", "since", "restore", "trial", "join", "receive", "send", "remark",
				"review", "sign", "verify", "words", "bench"), words);
		words.forEach(w -> assertEquals(0, Typed.in(folder).type(w, "--help").exit(), w));
	}

	private Typed type(String command) {
		List<String> words = WORD.matcher(command).results().map(m -> m.group(1) != null ? m.group(1) : m.group(2)).toList();
		assertEquals("./setwright", words.get(0), command);
		return Typed.in(folder).type(words.subList(1, words.size()).toArray(String[]::new));
	}
}
