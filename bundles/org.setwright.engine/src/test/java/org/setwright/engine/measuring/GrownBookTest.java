package org.setwright.engine.measuring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.Edition;
import org.setwright.engine.Reading;
import org.setwright.trade.Trade;

class GrownBookTest {
	private static final Book STARTER = BookReader.read(Path.of("../../rules/starter"), Trade.catalogue());

	@ParameterizedTest
	@CsvSource({ "1, 1", "30, 200", "300, 10", "1000, 200" })
	void hasAsManySoundRulesAndJobsAsWanted(int rules, int jobs) {
		Book book = GrownBook.of(STARTER, rules, jobs);
		Reading reading = Reading.of(book);
		assertEquals(List.of(), reading.problems());
		assertEquals(rules, reading.rules().size());
		assertEquals(List.of(), Reading.together(reading.rules()));
		assertEquals(jobs, book.jobs().stream().map(JobCase::name).distinct().count());
		assertEquals(rules, Edition.ofRules(reading.rules(), book.catalogue()).orElseThrow().rehearse(book.jobs().get(0).job()).standings().size());
	}

	@Test
	void growsTheSameBookEveryTime() {
		assertEquals(GrownBook.of(STARTER, 50, 3), GrownBook.of(STARTER, 50, 3));
	}

	@Test
	void nothingGrowsFromNothing() {
		Book empty = Book.empty(Path.of(""), Trade.catalogue());
		assertThrows(IllegalArgumentException.class, () -> GrownBook.of(empty, 10, 10));
	}
}
