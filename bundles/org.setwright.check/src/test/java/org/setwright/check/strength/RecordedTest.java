package org.setwright.check.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.check.Progress;
import org.setwright.engine.Edition;
import org.setwright.trade.Trade;

/** A job that was found is kept only when it notices, and says that it was recorded. */
class RecordedTest {
	private static final String RULE = """
			rule "Two stages"
			    @authority( shop practice )
			    @because( "It has two." )
			    @source( common practice )
			when
			    IndoorUnit( stages >= 2 )
			then
			    propose( HEAT_STAGES, 2 );
			end
			""";
	private static final LocalDate DAY = LocalDate.of(2026, 11, 27);
	@TempDir
	Path folder;
	private Book book;

	@BeforeEach
	void aBookWithOneJob() throws IOException {
		Files.createDirectories(folder.resolve("rules"));
		Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(folder.resolve("book.yaml"), "book: Test\n");
		Files.writeString(folder.resolve("rules/test.drl"), RULE);
		Files.writeString(folder.resolve("jobs/one.yaml"), "job: one\nindoor unit: { kind: furnace, stages: 1 }\nexpect:\n  heating stages: gap\n");
		book = BookReader.read(folder, Trade.catalogue());
	}

	@Test
	void savedInTheBookItCatchesTheMistakeThatNobodyNoticed() throws Exception {
		Strength before = strength(book);
		for (Catching catching : Catching.of(before, book.jobs())) {
			Recorded recorded = Recorded.of(catching, edition(book), DAY).orElseThrow();
			assertTrue(recorded.text().replaceAll("\\s+", " ").contains("Recorded on 2026-11-27"), recorded.text());
			Files.writeString(folder.resolve("jobs").resolve(recorded.file()), recorded.text());
		}
		Book more = BookReader.read(folder, Trade.catalogue());
		assertEquals(List.of(), more.problems());
		assertTrue(before.survivors().size() > 1 && more.jobs().size() > 1, before.survivors().size() + " survivors");
		Strength after = strength(more);
		assertEquals(List.of(), after.left());
		assertEquals(List.of(), after.survivors().stream().filter(t -> t.telltale().isPresent()).toList());
	}

	@Test
	void whenTheRulesSaySomethingElseMeanwhileNothingIsKept() throws Exception {
		Catching catching = Catching.of(strength(book), book.jobs()).stream().filter(c -> c.mistake().kind() == Mistake.Kind.VALUE_EXCHANGED).findFirst().orElseThrow();
		Edition other = edition(book.withRules(new Book.RuleFile("rules/test.drl", RULE.replace("HEAT_STAGES, 2", "HEAT_STAGES, 1"))));
		assertEquals(Optional.empty(), Recorded.of(catching, other, DAY));
	}

	private static Strength strength(Book book) {
		Edition edition = edition(book);
		return Strength.of(edition, book.jobs(), Progress.UNWATCHED).withTelltales(edition, book.jobs(), Progress.UNWATCHED);
	}

	private static Edition edition(Book book) {
		return Edition.compile(book).edition().orElseThrow();
	}
}
