package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.language.Rule;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;

/**
 * Every answer to why a rule does not speak, put to the rule engine: with the conditions it names left out the rule has to
 * speak, and with one of them left in it must not.
 */
class SecondOpinionTest {
	private final Map<String, String> pruned = new LinkedHashMap<>();
	private final Map<Job, Set<String>> mustSpeak = new LinkedHashMap<>();
	private final Map<Job, Set<String>> mustNot = new HashMap<>();
	private int beyond;

	@Test
	void onEveryRuleAndJobOfTheStarterBook() {
		Book book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
		ask(book, book.jobs().stream().map(JobCase::job).toList());
		int asked = mustSpeak.values().stream().mapToInt(Set::size).sum();
		assertTrue(asked > 5000 && beyond * 20 < asked, asked + " asked, " + beyond + " beyond this means");
		answered(book);
	}

	@ParameterizedTest(name = "seed {0}")
	@ValueSource(longs = { 12, 13, 14 })
	void onRandomRulesFullOfOrNotExistsAndJoins(long seed) {
		RandomBooks random = new RandomBooks(seed);
		Book book = Books.of(random.rules(40));
		List<Job> jobs = new ArrayList<>();
		for (int i = 0; i < 25; i++) {
			jobs.add(random.job());
		}
		ask(book, jobs);
		String all = String.join("\n", book.ruleFiles().get(0).text());
		assertTrue(List.of(" or ", "not (", "exists (", " $").stream().allMatch(all::contains), "the rules use every form");
		assertTrue(mustSpeak.values().stream().mapToInt(Set::size).sum() > 300, mustSpeak.values().toString());
		answered(book);
	}

	private void ask(Book book, List<Job> jobs) {
		Edition edition = Edition.compile(book).edition().orElseThrow();
		Pruned texts = new Pruned(book.ruleFiles().stream().collect(Collectors.toMap(Book.RuleFile::path, Book.RuleFile::text)));
		for (Job job : jobs) {
			for (WhyNot why : edition.about(job).ofEveryRule()) {
				if (!why.blockers().isEmpty() && why.rule().at().file().endsWith(".drl")) {
					ask(texts, edition.rules().indexOf(why.rule()), why, job);
				}
			}
		}
	}

	private void ask(Pruned texts, int number, WhyNot why, Job job) {
		Set<Integer> blocked = Pruned.blocked(why);
		Optional<String> without = pruned(texts, number, why.rule(), blocked);
		without.ifPresent(name -> mustSpeak.computeIfAbsent(job, j -> new HashSet<>()).add(name));
		beyond += without.isEmpty() ? 1 : 0;
		boolean lists = why.rule().text().matches("(?s).*(Wire|Transformer|Terminal)\\(.*");
		for (int one : lists ? Set.<Integer>of() : blocked) {
			Set<Integer> others = new HashSet<>(blocked);
			others.remove(one);
			pruned(texts, number, why.rule(), others).ifPresent(name -> mustNot.computeIfAbsent(job, j -> new HashSet<>()).add(name));
		}
	}

	private Optional<String> pruned(Pruned texts, int number, Rule rule, Set<Integer> left) {
		String name = number + " without " + left.stream().sorted().toList();
		Optional<String> text = texts.without(rule, left, name);
		text.ifPresent(t -> pruned.put(name, t));
		return text.map(t -> name);
	}

	/** Runs all rewritten rules at once, beside the book's own, which make the findings they ask for. */
	private void answered(Book book) {
		List<Book.RuleFile> files = new ArrayList<>(book.ruleFiles());
		files.add(new Book.RuleFile("rules/pruned.drl", String.join("", pruned.values())));
		Compilation compiled = Edition.compile(book.with(files, book.tables(), List.of()));
		Edition edition = compiled.edition().orElseThrow(() -> new AssertionError(compiled.problems().get(0).toString()));
		mustSpeak.forEach((job, names) -> {
			Set<String> spoke = edition.run(job).firings().stream().map(f -> f.rule().name()).collect(Collectors.toSet());
			assertEquals(List.of(), names.stream().filter(n -> !spoke.contains(n)).map(pruned::get).toList(), "still silent");
			assertEquals(List.of(), mustNot.getOrDefault(job, Set.of()).stream().filter(spoke::contains).map(pruned::get).toList(),
					"speaks though something is said to be in its way");
		});
	}
}
