package org.setwright.check.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.ItemList;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.engine.Edition;
import org.setwright.trade.Trade;

/** Every job of the starter book comes to what the trade expects of it. */
class StarterCasesTest {
	private static final Book BOOK = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
	private static final CaseCheck CHECK = CaseCheck.of(Edition.compile(BOOK).edition().orElseThrow(), BOOK.jobs(),
			Progress.UNWATCHED, true).orElseThrow();

	@TestFactory
	Stream<DynamicContainer> everyPointIsMet() {
		return CHECK.jobs().stream().map(job -> dynamicContainer(job.job().name(), job.asked().stream()
				.map(p -> dynamicTest(p.what(), () -> assertEquals(Standing.MET, p.standing(), () -> p.at() + ": " + p.sentence())))));
	}

	@Test
	void everyJobRuns() {
		assertEquals(List.of(), CHECK.jobs().stream().map(CheckedJob::fault).filter(f -> !f.isEmpty()).toList());
	}

	/** So that the book shows how each is written. */
	@Test
	void everyKindOfExpectationIsUsed() {
		List<JobCase> jobs = BOOK.jobs();
		for (Class<?> kind : JobCase.Expectation.class.getPermittedSubclasses()) {
			assertTrue(jobs.stream().flatMap(j -> j.expected().values().stream()).anyMatch(kind::isInstance), kind.getSimpleName());
		}
		assertTrue(jobs.stream().flatMap(j -> j.expected().values().stream())
				.anyMatch(e -> e instanceof JobCase.Settled s && s.within().isPresent()), "a tolerance");
		for (ItemList list : ItemList.values()) {
			assertTrue(jobs.stream().anyMatch(j -> !j.items(list).isEmpty()), list.key());
		}
		assertTrue(Arrays.asList(Standing.values()).stream().filter(s -> s != Standing.NOT_MET).allMatch(s -> CHECK.count(s) > 0));
	}
}
