package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

/** A book read from bytes says the same as one read from its folder; and what a book says of signing. */
class BookInHandTest {
	private static final Path STARTER = Path.of("../../rules/starter");

	@Test
	void theStarterBookReadsTheSameFromBytesAsFromItsFolder() throws IOException {
		Book fromFolder = BookReader.read(STARTER, Trade.catalogue());
		assertEquals(fromFolder, BookReader.read(fromFolder.folder(), bytes(), Trade.catalogue()));
	}

	@Test
	void aFileThatIsMissingOrNotTextIsAProblemAsInAFolder() {
		Book none = BookReader.read(Path.of("/x"), Map.of(), Trade.catalogue());
		assertEquals("book.yaml", none.problems().get(0).at().file());
		Book binary = BookReader.read(Path.of("/x"), Map.of("book.yaml", utf8("book: A\n"), "rules/a.drl", new byte[] { 65, 0 },
				"rules/sub/b.drl", utf8("x"), "rules/.c.drl", utf8("x")), Trade.catalogue());
		assertEquals(List.of("rules/a.drl:1:2"), binary.problems().stream().map(p -> p.at().toString()).toList());
	}

	@Test
	void aBookMayDemandToBeSigned() {
		assertEquals(SignOff.NOT_DEMANDED, signOff("book: A\n"));
		assertEquals(SignOff.DEMANDED, signOff("book: A\nsign-off: Demanded\n"));
		assertEquals(SignOff.FROM_A_SECOND_PERSON, signOff("book: A\nsign-off: demanded from a second person\n"));
	}

	@Test
	void whatCannotBeUnderstoodIsAProblemAndDemandsASignature() {
		Book book = book("book: A\nsign-off: sometimes\n");
		assertEquals(SignOff.DEMANDED, book.signOff());
		assertEquals("book.yaml:2:11: This does not say whether the book has to be signed. Write one of: not demanded, demanded, "
				+ "demanded from a second person.", book.problems().get(0).toString());
	}

	private static SignOff signOff(String yaml) {
		return book(yaml).signOff();
	}

	private static Book book(String yaml) {
		return BookReader.read(Path.of("/x"), Map.of("book.yaml", utf8(yaml)), Trade.catalogue());
	}

	private static byte[] utf8(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
	}

	private static Map<String, byte[]> bytes() throws IOException {
		Map<String, byte[]> bytes = new HashMap<>();
		try (Stream<Path> files = Files.walk(STARTER)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				bytes.put(STARTER.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
			}
		}
		return bytes;
	}
}
