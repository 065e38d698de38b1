package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookReaderTest {
	@TempDir
	Path folder;

	@BeforeEach
	void aSoundBook() throws IOException {
		write("book.yaml", "book: Fennimore practice\ndescription: What we do.\nformat: 1\n");
		write("rules/pump.drl", "rule \"A\"\nend\n");
		write("tables/speed-by-maker.csv", "pump maker, => pump speed\nNorrvik, 2\n");
		write("jobs/larch.yaml", "job: Larch\n");
		write("jobs/alder.yaml", "job: Alder\npump: { stages: 2 }\n");
	}

	@Test
	void readsRulesTablesAndJobsByPath() {
		Book book = read();
		assertEquals(List.of(), book.problems());
		assertEquals("Fennimore practice", book.name());
		assertEquals("What we do.", book.description());
		assertEquals(List.of(new Book.RuleFile("rules/pump.drl", "rule \"A\"\nend\n")), book.ruleFiles());
		assertEquals(List.of("speed-by-maker"), book.tables().stream().map(Table::name).toList());
		assertEquals(List.of("Alder", "Larch"), book.jobs().stream().map(JobCase::name).toList());
		assertEquals(folder.toAbsolutePath(), book.folder());
	}

	@Test
	void aMissingFolderIsAProblem() {
		assertProblems(BookReader.read(folder.resolve("nowhere"), Sample.CATALOGUE),
				"ERROR : There is no such folder. Check the name, or make a new book there.");
	}

	@Test
	void aFileIsNoBook() {
		assertProblems(BookReader.read(folder.resolve("book.yaml"), Sample.CATALOGUE),
				"ERROR : This is a file, and a book is a folder. Name the folder that holds book.yaml.");
	}

	@Test
	void aFolderWithoutBookYamlIsNoBookYet() throws IOException {
		Files.delete(folder.resolve("book.yaml"));
		assertProblems(read(), "ERROR book.yaml: The folder holds no book.yaml, so it is no rule book yet. Make the file with"
				+ " the lines \"book: <name of the book>\" and \"format: 1\", or open another folder.");
	}

	@Test
	void jobNamesAreUniqueOverFiles() throws IOException {
		write("jobs/other.yaml", "# again\njob: LARCH\n");
		Book book = read();
		assertProblems(book, "ERROR jobs/other.yaml:2:6: There is already a job called \"LARCH\", in jobs/larch.yaml."
				+ " Give one of the two another name.");
		assertEquals(List.of("Alder", "Larch"), book.jobs().stream().map(JobCase::name).toList());
	}

	@Test
	void aJobWithoutANameIsNotTakenForAnother() throws IOException {
		write("jobs/zlarch.yaml", "job: alder2\n");
		write("jobs/alder2.yaml", "pump: none\n");
		assertProblems(read(), "ERROR jobs/alder2.yaml: The job has no name. Add a line \"job:\" with what the shop calls it.");
	}

	@Test
	void aJobWithAnErrorIsNotInTheBook() throws IOException {
		write("jobs/larch.yaml", "job: Larch\npump: { stages: 9 }\n");
		Book book = read();
		assertProblems(book, "ERROR jobs/larch.yaml:2:17: \"9\" is out of bounds for stages. Write a whole number from 1 to 4.");
		assertEquals(List.of("Alder"), book.jobs().stream().map(JobCase::name).toList());
	}

	private Book read() {
		return BookReader.read(folder, Sample.CATALOGUE);
	}

	private void write(String path, String text) throws IOException {
		Files.createDirectories(folder.resolve(path).getParent());
		Files.writeString(folder.resolve(path), text);
	}

	private static void assertProblems(Book book, String... expected) {
		assertEquals(String.join("\n", expected),
				String.join("\n", book.problems().stream().map(p -> p.severity() + " " + p).toList()));
	}
}
