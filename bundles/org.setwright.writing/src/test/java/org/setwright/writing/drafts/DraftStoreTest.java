package org.setwright.writing.drafts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftStoreTest {
	private static final Path BOOK = Path.of("book").toAbsolutePath();
	@TempDir
	private Path folder;

	@Test
	void whatWasKeptIsThereAfterwardsToTheLetter() throws IOException {
		String text = "rule \"half\r\n\n\u00e9\u2082 ";
		new DraftStore(folder.resolve("new")).keep(BOOK, new Draft("rules/a.drl", text));
		assertEquals(List.of(new Draft("rules/a.drl", text)), new DraftStore(folder.resolve("new")).of(BOOK));
	}

	@Test
	void aLaterDraftReplacesAnEarlierOneAndOtherBooksHaveTheirOwn() throws IOException {
		DraftStore store = new DraftStore(folder);
		store.keep(BOOK, new Draft("rules/a.drl", "one"));
		store.keep(BOOK, new Draft("rules/a.drl", "two"));
		store.keep(BOOK.resolve("other"), new Draft("rules/a.drl", "three"));
		assertEquals(List.of(new Draft("rules/a.drl", "two")), store.of(BOOK));
		assertEquals(List.of(new Draft("rules/a.drl", "three")), store.of(BOOK.resolve("other")));
	}

	@Test
	void whatIsSavedOrThrownAwayIsForgotten() throws IOException {
		DraftStore store = new DraftStore(folder);
		Map<String, String> both = Map.of("rules/a.drl", "one", "jobs/b.yaml", "job: B");
		store.keepOnly(BOOK, both, Map.of());
		assertEquals(List.of(new Draft("jobs/b.yaml", "job: B"), new Draft("rules/a.drl", "one")), store.of(BOOK));
		store.keepOnly(BOOK, Map.of("rules/a.drl", "one more"), both);
		assertEquals(List.of(new Draft("rules/a.drl", "one more")), store.of(BOOK));
	}

	@Test
	void draftsThatWereNotKeptByTheLastCallAreLeftAlone() throws IOException {
		DraftStore store = new DraftStore(folder);
		store.keep(BOOK, new Draft("rules/from-a-crash.drl", "x"));
		store.keepOnly(BOOK, Map.of(), Map.of());
		assertEquals(1, store.of(BOOK).size());
	}

	@Test
	void aFileThatIsNoDraftIsPassedOver() throws IOException {
		Files.writeString(folder.resolve("broken.draft"), "only one line");
		Files.write(folder.resolve("binary.draft"), new byte[] { (byte) 0xff, 0, 1 });
		assertEquals(List.of(), new DraftStore(folder).of(BOOK));
	}

	@Test
	void aPlaceThatCannotBeWrittenIsReported() throws IOException {
		Path file = Files.writeString(folder.resolve("file"), "");
		assertThrows(IOException.class, () -> new DraftStore(file).keep(BOOK, new Draft("rules/a.drl", "x")));
	}
}
