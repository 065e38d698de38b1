package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are broken, hostile or in the wrong place. */
class BookFolderTest {
	private static final String SAVE = " Open it in a text editor and save it as UTF-8.";
	@TempDir
	Path parent;
	private Path folder;

	@BeforeEach
	void aSoundBook() throws IOException {
		folder = parent.resolve("book");
		write("book.yaml", "book: Fennimore practice\n");
		write("rules/pump.drl", "rule \"A\"\nend\n");
		write("jobs/alder.yaml", "job: Alder\n");
	}

	@Test
	void otherEncodingsAreRefusedAtTheLetterConcerned() throws IOException {
		write("jobs/b.yaml", "job: B\nclimate: 5 °C\n".getBytes(StandardCharsets.ISO_8859_1));
		assertProblems("jobs/b.yaml:2:12: A letter here is not written in UTF-8." + SAVE);
		write("jobs/b.yaml", "\uFEFFjob: B\n".getBytes(StandardCharsets.UTF_16LE));
		assertProblems("jobs/b.yaml:1:1: The file is written in UTF-16, and UTF-8 is read here." + SAVE);
		write("jobs/b.yaml", "job: B\n".getBytes(StandardCharsets.UTF_16));
		assertProblems("jobs/b.yaml:1:1: The file is written in UTF-16, and UTF-8 is read here." + SAVE);
		write("rules/pump.drl", new byte[] { 'r', 'u', '\n', (byte) 0xE2, (byte) 0x82 });
		Files.delete(folder.resolve("jobs/b.yaml"));
		assertProblems("rules/pump.drl:2:1: A letter here is not written in UTF-8." + SAVE);
	}

	@Test
	void filesWithZeroBytesAreNoText() throws IOException {
		write("rules/pump.drl", "rule\n a\0b");
		assertProblems("rules/pump.drl:2:3: This is no text: a zero byte stands here."
				+ " Remove the file from the book, or restore it from an earlier edition.");
	}

	@Test
	void byteOrderMarksAreLeftOut() throws IOException {
		write("rules/pump.drl", "\uFEFFrule \"A\"\r\nend\r\n");
		write("book.yaml", "\uFEFFbook: Fennimore\r\n");
		write("tables/a.csv", "\uFEFFpump maker, => pump speed\r\nNorrvik, 2\r\n");
		assertProblems();
		assertEquals("rule \"A\"\r\nend\r\n", read().ruleFiles().get(0).text());
		assertEquals("pump maker", read().tables().get(0).header().get(0).text());
	}

	@Test
	void hugeFilesAreNotRead() throws IOException {
		write("jobs/b.yaml", "#".repeat(BookFolder.LARGEST_FILE + 1));
		assertProblems("jobs/b.yaml: The file is larger than 2 MB, so it is not read. Split it.");
		write("jobs/b.yaml", "job: B\n#" + "x".repeat(BookFolder.LARGEST_FILE - 8));
		assertProblems();
	}

	@Test
	void tooManyFilesAreNotRead() throws IOException {
		for (int i = 0; i < 5; i++) {
			write("rules/r" + i + ".drl", "");
		}
		List<Problem> problems = new ArrayList<>();
		assertEquals(4, new BookFolder(folder.toRealPath(), problems::add, 4).list("rules", ".drl").size());
		assertEquals("[rules: There are more than 4 files in \"rules\"; the rest is not read. Split the book into several.]", problems.toString());
	}

	@Test
	void linksOutOfTheBookAreNotFollowed() throws IOException {
		Path secret = Files.writeString(parent.resolve("secret.yaml"), "job: Secret\n");
		Path others = Files.createDirectories(parent.resolve("others"));
		Files.writeString(others.resolve("a.csv"), "secret, => pump speed\na, 1\n");
		Files.createSymbolicLink(folder.resolve("jobs/b.yaml"), secret);
		Files.createSymbolicLink(folder.resolve("jobs/c.yaml"), Path.of("../../secret.yaml"));
		Files.createSymbolicLink(folder.resolve("jobs/d.yaml"), parent.resolve("nowhere.yaml"));
		Files.createSymbolicLink(folder.resolve("tables"), others);
		String remedy = " Replace the link by the file itself.";
		assertProblems("jobs/b.yaml: This is a link to a place outside the book, which is not followed." + remedy,
				"jobs/c.yaml: This is a link to a place outside the book, which is not followed." + remedy,
				"jobs/d.yaml: This is a link that leads nowhere." + remedy,
				"tables: \"tables\" is a link to a place outside the book, which is not followed. Replace the link by a real folder.");
		assertFalse(read().toString().contains("ecret"), "nothing of it was read");
	}

	@Test
	void linksInsideTheBookAreFollowed() throws IOException {
		Files.createSymbolicLink(folder.resolve("jobs/b.yaml"), Path.of("../elsewhere.yaml"));
		write("elsewhere.yaml", "job: B\n");
		assertProblems();
		assertEquals(List.of("Alder", "B"), read().jobs().stream().map(JobCase::name).toList());
	}

	@Test
	void aBookMayBeReachedThroughALink() throws IOException {
		Path link = Files.createSymbolicLink(parent.resolve("link"), folder);
		assertEquals(List.of(), BookReader.read(link, Sample.CATALOGUE).problems());
	}

	@Test
	void foldersNamedLikeFilesAndFilesNamedLikeFolders() throws IOException {
		Files.createDirectories(folder.resolve("jobs/b.yaml"));
		write("tables", "a,b\n");
		assertProblems("jobs/b.yaml: This is a folder, and a file is expected here. Rename the folder.",
				"tables: \"tables\" is not a folder. Rename it, and make a folder \"tables\" for these files.");
	}

	@Test
	void aFolderNamedBookYamlIsNoBook() throws IOException {
		Files.delete(folder.resolve("book.yaml"));
		Files.createDirectories(folder.resolve("book.yaml"));
		assertProblems("book.yaml: This is a folder, and a file is expected here. Rename the folder.");
	}

	@Test
	void unreadableFilesAreSaid() throws IOException {
		Path file = folder.resolve("jobs/alder.yaml");
		assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"), "only where files have permissions");
		Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
		assumeFalse(Files.isReadable(file), "this user may read everything");
		assertProblems("jobs/alder.yaml: The file cannot be opened. Check that you may read it, and read the book again.");
	}

	@Test
	void namesThatCannotBeShownAreRefused() throws IOException {
		write("jobs/a\nb.yaml", "job: B\n");
		write("jobs/a\\c.yaml", "job: C\n");
		String remedy = " Rename it with letters, digits, blanks and dashes.";
		assertProblems("jobs/a?b.yaml: The name of this file holds characters that do not belong in a name." + remedy,
				"jobs/a\\c.yaml: The name of this file holds characters that do not belong in a name." + remedy);
	}

	@Test
	void ordinaryNamesMayHoldBlanksAndSigns() throws IOException {
		write("jobs/Larch Lane 14 (upstairs), 2nd.yaml", "job: Larch\n");
		assertProblems();
		assertEquals("jobs/Larch Lane 14 (upstairs), 2nd.yaml", read().job("Larch").orElseThrow().path());
	}

	@Test
	void filesThatAreNotReadAreSaid() throws IOException {
		write("jobs/b.yml", "job: B\n");
		write("rules/old.txt", "rule\n");
		write("rules/spare/b.drl", "rule");
		write("rules/README.md", "# our rules\n");
		write("rules/.hidden", "x");
		write("rules/pump.drl~", "x");
		assertProblems("jobs/b.yml: This file is not read: only files that stand here and end in .yaml are. Rename it, or move it out of the folder.",
				"rules/old.txt: This file is not read: only files that stand here and end in .drl are. Rename it, or move it out of the folder.",
				"rules/spare: This folder is not read: only files that stand here and end in .drl are. Move its files here.");
	}

	@Test
	void aBookWithoutRulesIsSaid() throws IOException {
		Files.delete(folder.resolve("rules/pump.drl"));
		Book book = read();
		assertEquals(List.of("The book has no rules, so every setting stays open."), book.problems().stream().map(Problem::what).toList());
		assertEquals(Problem.Severity.WARNING, book.problems().get(0).severity());
	}

	@Test
	void whatABookDemandsOfItsJobsIsChecked() throws IOException {
		write("book.yaml", "book: A\nat least: { rules spoken: 95.5 %, mistakes caught: 90% }\n");
		assertEquals(java.util.Map.of(Floors.Figure.RULES_SPOKEN, 0.955, Floors.Figure.MISTAKES_CAUGHT, 0.9), read().floors().shares());
		write("book.yaml", "book: A\nat least:\n  rule spoken: 5 %\n  mistakes caught: 120 %\n");
		assertProblems("book.yaml:3:3: Nothing called \"rule spoken\" can be demanded. Write \"rules spoken\".",
				"book.yaml:4:20: This is not a share. Write a number from 0 to 100 with a percent sign, for example 90 %.");
		write("book.yaml", "book: A\nat least: 90 %\n");
		assertProblems("book.yaml:2:11: What is demanded at least is not a group of names and shares. Write for example \"at least: { rules spoken: 100 % }\".");
	}

	@Test
	void bookYamlIsChecked() throws IOException {
		write("book.yaml", "");
		assertProblems("book.yaml: The file says nothing. Begin with a line \"book:\" and the name of the book.");
		write("book.yaml", "Fennimore\n");
		assertProblems("book.yaml:1:1: The file consists of names and values, and this is neither. Begin with a line \"book:\" and the name of the book.");
		write("book.yaml", "description: x\nformat: 2\n");
		assertProblems("book.yaml: The book has no name. Add a line \"book:\" with its name.",
				"book.yaml:2:9: The book is written in a format that this program does not read."
						+ " Write \"format: 1\", or use a newer Setwright when the book was made with one.");
		write("book.yaml", "book: A\nbook: B\nauthor: C\ndescripton: D\n");
		assertProblems("book.yaml:2:1: \"book\" is written twice; first on line 1. Keep the right one and remove the other.",
				"book.yaml:3:1: There is no \"author\" in book.yaml. Write one of: book, description, format, at least, sign-off.",
				"book.yaml:4:1: There is no \"descripton\" in book.yaml. Write \"description\".");
		write("book.yaml", "book: [A]\n");
		assertProblems("book.yaml: The book has no name. Add a line \"book:\" with its name.",
				"book.yaml:1:7: A list or group stands where words are expected."
						+ " Write words after \"book:\", in quotes when they hold colons, brackets or braces.");
		write("book.yaml", "book: \"A\n");
		assertProblems("book.yaml:1:7: The quote opened here is not closed. Add the closing quote at the end of the value.");
	}

	@Test
	void pipesAndDevicesAreNotOpened() throws IOException, InterruptedException {
		Path pipe = folder.resolve("jobs/b.yaml");
		assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "only where pipes can be made");
		assertEquals(0, new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor());
		assertProblems("jobs/b.yaml: This is not a file that can be read. Remove it from the book.");
	}

	@Test
	void everyFaultyFileIsReportedInOneReading() throws IOException {
		write("book.yaml", "book: A\nformat: x\n");
		write("rules/pump.drl", new byte[] { (byte) 0xFF });
		write("tables/a.csv", "a, b\n1\n");
		write("jobs/alder.yaml", "job: Alder\npump: 3\n");
		write("jobs/b.yaml", "jab: B\n");
		assertEquals(List.of("book.yaml", "jobs/alder.yaml", "jobs/b.yaml", "jobs/b.yaml", "rules/pump.drl", "tables/a.csv"),
				read().problems().stream().map(p -> p.at().file()).toList());
		assertTrue(read().tables().isEmpty());
	}

	private Book read() {
		return BookReader.read(folder, Sample.CATALOGUE);
	}

	private void write(String path, String text) throws IOException {
		write(path, text.getBytes(StandardCharsets.UTF_8));
	}

	private void write(String path, byte[] bytes) throws IOException {
		Files.createDirectories(folder.resolve(path).getParent());
		Files.write(folder.resolve(path), bytes);
	}

	private void assertProblems(String... expected) {
		assertEquals(String.join("\n", expected), String.join("\n", read().problems().stream().map(Problem::toString).toList()));
	}
}
