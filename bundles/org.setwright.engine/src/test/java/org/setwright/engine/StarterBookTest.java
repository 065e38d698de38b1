package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.book.Table;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;

/** The starter rule book, run as a shop would run it; what each job expects is checked where job cases are, in the bundle "check". */
class StarterBookTest {
	/** How many rules are deleted one at a time; each deletion compiles the whole book anew. */
	private static final int DELETED = 8;

	private static Book book;
	private static Edition edition;
	private static final Map<JobCase, Outcome> OUTCOMES = new LinkedHashMap<>();

	@BeforeAll
	static void runEveryJob() {
		book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
		Compilation compilation = Edition.compile(book);
		assertEquals(List.of(), compilation.problems());
		edition = compilation.edition().orElseThrow();
		book.jobs().forEach(j -> OUTCOMES.put(j, edition.run(j.job())));
	}

	@Test
	void theBookIsLargeEnoughToStartAShop() {
		assertTrue(edition.rules().size() >= 60 && book.tables().size() >= 6 && book.jobs().size() >= 24);
		book.jobs().forEach(j -> assertTrue(j.expectations() > 0, j.name() + " expects nothing"));
	}

	@Test
	void everyRuleSpeaksOnSomeJob() {
		Set<Rule> silent = new LinkedHashSet<>(edition.rules());
		OUTCOMES.values().forEach(o -> o.firings().forEach(f -> silent.remove(f.rule())));
		assertEquals(List.of(), silent.stream().map(Rule::name).toList());
	}

	@Test
	void everySettingOfTheCatalogueIsSettledOnSomeJob() {
		Set<Setting> open = new LinkedHashSet<>(book.catalogue().settings());
		OUTCOMES.values().forEach(o -> o.settings().stream().filter(s -> s.state() == State.SETTLED)
				.forEach(s -> open.remove(s.setting())));
		assertEquals(List.of(), open.stream().map(Setting::id).toList());
	}

	@Test
	void aRuleThatAssumesUnderUnknownAsksForACheck() {
		for (Rule rule : edition.rules()) {
			boolean proposes = rule.then().stream().anyMatch(Action.Propose.class::isInstance);
			if (proposes && !rule.name().startsWith("table ") && rule.when().stream().anyMatch(StarterBookTest::restsOnUnknown)) {
				assertTrue(rule.then().stream().anyMatch(a -> a instanceof Action.Warn w && w.kind() == CautionKind.CHECK_AT_START_UP),
						"assumes without a check: " + rule.name());
			}
		}
	}

	/** A test for unknown beside another joined by || is no assumption: the rule holds for known answers too. */
	private static boolean restsOnUnknown(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			return isUnknown(pattern.test());
		}
		return !(condition instanceof Condition.Not) && condition.inner().stream().anyMatch(StarterBookTest::restsOnUnknown);
	}

	private static boolean isUnknown(org.setwright.engine.language.Test test) {
		return test instanceof org.setwright.engine.language.Test.IsUnknown is && is.unknown()
				|| test instanceof org.setwright.engine.language.Test.AllOf all
						&& all.tests().stream().anyMatch(StarterBookTest::isUnknown);
	}

	/** Every rule that proposes decides alone, or disputes, some setting that a job has an expectation for. */
	@Test
	void noRuleCouldBeLostUnnoticed() {
		Set<Rule> unnoticed = new LinkedHashSet<>(edition.rules());
		unnoticed.removeIf(r -> r.then().stream().noneMatch(Action.Propose.class::isInstance));
		OUTCOMES.forEach((job, outcome) -> outcome.settings().stream().filter(s -> job.expected().containsKey(s.setting()))
				.filter(s -> !s.proposals().isEmpty() && (s.deciding().size() == 1 || s.state() == State.DISPUTED))
				.forEach(s -> s.deciding().forEach(p -> unnoticed.remove(p.rule()))));
		assertEquals(List.of(), unnoticed.stream().map(Rule::name).toList());
	}

	@TestFactory
	Stream<DynamicTest> deletingTheOnlyRuleThatDecidesLeavesAGap() {
		Map<Rule, Map.Entry<JobCase, Setting>> alone = new LinkedHashMap<>();
		OUTCOMES.forEach((job, outcome) -> outcome.settings().stream()
				.filter(s -> s.state() == State.SETTLED && s.need() == Need.NEEDED && s.proposals().size() == 1)
				.forEach(s -> alone.putIfAbsent(s.proposals().get(0).rule(), Map.entry(job, s.setting()))));
		List<Rule> rules = List.copyOf(alone.keySet());
		int step = Math.max(1, rules.size() / DELETED);
		return Stream.iterate(0, i -> i < rules.size(), i -> i + step).map(rules::get).map(rule -> dynamicTest(rule.name(), () -> {
			Edition without = compiled(without(rule));
			assertEquals(edition.rules().size() - 1, without.rules().size(), "exactly one rule is gone");
			SettingOutcome setting = without.run(alone.get(rule).getKey().job()).setting(alone.get(rule).getValue()).orElseThrow();
			assertEquals(State.GAP, setting.state());
		}));
	}

	@Test
	void aContradictionOfEqualAuthorityIsADispute() {
		String rule = """
				rule "Seven minutes" @authority( shop practice ) @because( "Somebody thinks so." ) @source( common practice )
				when OutdoorUnit( ) then propose( COMPRESSOR_REST, "7 min" ); end
				""";
		Edition contradicted = compiled(book.withRules(new Book.RuleFile("rules/zz-contradiction.drl", rule)));
		Setting rest = Trade.catalogue().setting("COMPRESSOR_REST").orElseThrow();
		SettingOutcome outcome = contradicted.run(book.job("jobs/larch-lane-14.yaml").orElseThrow().job()).setting(rest).orElseThrow();
		assertEquals(State.DISPUTED, outcome.state());
	}

	private static Edition compiled(Book changed) {
		Compilation compilation = Edition.compile(changed);
		return compilation.edition().orElseThrow(() -> new AssertionError(compilation.problems()));
	}

	private static Book without(Rule rule) {
		String file = rule.at().file();
		Optional<Book.RuleFile> rules = book.ruleFiles().stream().filter(f -> f.path().equals(file)).findFirst();
		if (rules.isPresent()) {
			return book.withRules(new Book.RuleFile(file, rules.get().text().replace(rule.text(), "")));
		}
		List<Table> tables = book.tables().stream().map(t -> !t.path().equals(file) ? t
				: new Table(t.path(), t.name(), t.header(),
						t.rows().stream().filter(r -> r.cells().get(0).at().line() != rule.at().line()).toList()))
				.toList();
		return book.with(book.ruleFiles(), tables, book.jobs());
	}
}
