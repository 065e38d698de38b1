package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.Trade;

/** The starter rule book with what each of its jobs comes to, read once for all tests. */
final class StarterRuns {
	static final Book BOOK = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
	static final Edition EDITION = edition();
	private static final Map<String, Outcome> OUTCOMES = new LinkedHashMap<>();

	private StarterRuns() {
	}

	/** @return what the job in the file {@code name}, without folder and ending, comes to */
	static synchronized Outcome outcome(String name) {
		JobCase job = BOOK.jobs().stream().filter(j -> j.path().equals("jobs/" + name + ".yaml")).findFirst()
				.orElseThrow(() -> new AssertionError("no job " + name));
		return OUTCOMES.computeIfAbsent(name, x -> EDITION.run(job.job()));
	}

	/** @return what every job comes to */
	static List<Outcome> outcomes() {
		return BOOK.jobs().stream().map(j -> outcome(j.path().replaceFirst("jobs/(.*)\\.yaml", "$1"))).toList();
	}

	/** @return the names of the rules that speak */
	static Set<String> speaking(Outcome outcome) {
		return outcome.firings().stream().map(Firing::rule).map(r -> r.name()).collect(Collectors.toSet());
	}

	private static Edition edition() {
		Compilation compilation = Edition.compile(BOOK);
		assertEquals(List.of(), compilation.problems());
		return compilation.edition().orElseThrow();
	}
}
