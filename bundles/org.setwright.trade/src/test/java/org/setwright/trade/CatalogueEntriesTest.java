package org.setwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;

/** Every entry of the catalogue is something a technician can read, and nothing is called like something else. */
class CatalogueEntriesTest {
	/** One entry, whatever it describes. */
	private record Entry(String id, String label, String meaning, Domain domain) {
	}

	private static Stream<FactKind> kinds() {
		return Trade.catalogue().kinds().stream();
	}

	private static Stream<Setting> settings() {
		return Trade.catalogue().settings().stream();
	}

	private static List<Entry> entriesWithDomains() {
		List<Entry> entries = new ArrayList<>();
		kinds().forEach(k -> k.fields().forEach(f -> entries.add(new Entry(k.name() + "." + f.name(), f.label(), f.meaning(), f.domain()))));
		settings().forEach(s -> entries.add(new Entry(s.id(), s.label(), s.meaning(), s.domain())));
		return entries;
	}

	@Test
	void thereAreEnoughSettingsForAWholeHouse() {
		assertTrue(settings().count() >= 45, "settings: " + settings().count());
		assertTrue(kinds().count() >= 20, "kinds of fact: " + kinds().count());
	}

	@TestFactory
	Stream<DynamicTest> everyMeaningIsASentence() {
		Stream<Entry> choices = entriesWithDomains().stream().filter(e -> e.domain() instanceof Domain.Choices)
				.flatMap(e -> ((Domain.Choices) e.domain()).options().stream()
						.map(o -> new Entry(e.id() + "/" + o.id(), o.label(), o.meaning(), null)));
		Stream<Entry> kinds = kinds().map(k -> new Entry(k.name(), k.label(), k.meaning(), null));
		return Stream.of(entriesWithDomains().stream(), choices, kinds).flatMap(s -> s)
				.map(e -> DynamicTest.dynamicTest(e.id(), () -> readsAsASentence(e)));
	}

	private static void readsAsASentence(Entry entry) {
		String meaning = entry.meaning();
		assertTrue(meaning.matches("[A-Z0-9].*[^.]\\."), "begins with a capital and ends with one full stop: " + meaning);
		assertTrue(!meaning.contains(". ") || meaning.contains("a.m."), "is one sentence: " + meaning);
		assertTrue(meaning.length() <= 160, "can be read aloud in one breath: " + meaning);
		assertTrue(!entry.label().isBlank() && entry.label().equals(entry.label().strip()), "has a label: " + entry);
	}

	@Test
	void everyFieldIsSaidInASentence() {
		kinds().forEach(k -> k.fields().forEach(f -> {
			boolean yesOrNo = f.domain() instanceof Domain.YesNo;
			String where = k.name() + "." + f.name() + " says " + f.says();
			assertEquals(yesOrNo, f.says().matches("[^|{}]+\\|[^|{}]+"), where);
			assertEquals(!yesOrNo, f.says().matches("[^{}|]*\\{a?\\}[^{}|]*"), where);
			assertTrue(!f.says().startsWith("says yes to"), where + ": give it two sentences");
		}));
	}

	@Test
	void whatIsComputedByWayOfSomethingNeedsAllThatDoes() {
		List<String> ways = new ArrayList<>();
		kinds().forEach(k -> k.fields().forEach(f -> f.calculation().ifPresent(c -> c.through().forEach(way -> {
			Field through = Trade.catalogue().kind(way.split("\\.")[0]).orElseThrow().field(way.split("\\.")[1]).orElseThrow();
			assertTrue(c.from().containsAll(through.calculation().orElseThrow().from()), k.name() + "." + f.name() + " by way of " + way);
			ways.add(way);
		}))));
		assertTrue(ways.size() >= 9, ways.toString());
	}

	@Test
	void noTwoEntriesOfOneListShareALabel() {
		assertAllDifferent("kinds of fact", kinds().flatMap(k -> Stream.of(k.label(), k.key()).distinct()).toList());
		assertAllDifferent("settings", settings().map(Setting::label).toList());
		kinds().forEach(k -> assertAllDifferent(k.label(), k.fields().stream().map(Field::label).toList()));
		entriesWithDomains().stream().filter(e -> e.domain() instanceof Domain.Choices).forEach(e -> assertAllDifferent(
				e.id(), ((Domain.Choices) e.domain()).options().stream().flatMap(o -> Stream.of(o.id(), o.label())
						.map(t -> t.toLowerCase(Locale.ROOT)).distinct()).toList()));
	}

	@Test
	void noLabelOfASettingIsTheIdOfAnother() {
		Map<String, String> byId = new HashMap<>();
		settings().forEach(s -> byId.put(s.id().toLowerCase(Locale.ROOT), s.id()));
		settings().forEach(s -> assertTrue(
				s.id().equals(byId.getOrDefault(s.label().toLowerCase(Locale.ROOT), s.id())),
				s.label() + " is also the id of another setting"));
	}

	/** Headers of tables are "kind label field label": two different fields must not read the same. */
	@Test
	void headersOfTablesAreUnambiguous() {
		assertAllDifferent("table headers",
				kinds().flatMap(k -> k.fields().stream().map(f -> k.label() + " " + f.label())).toList());
	}

	@Test
	void everyDomainHasValuesToChooseFrom() {
		for (Entry entry : entriesWithDomains()) {
			if (entry.domain() instanceof Domain.Choices choices) {
				assertTrue(choices.options().size() >= 2, entry.id());
			} else if (entry.domain() instanceof Domain.Whole whole) {
				assertTrue(whole.least() < whole.most() && whole.most() < 1000, entry.id() + " " + whole.allowed());
			} else if (entry.domain() instanceof Domain.Measure measure) {
				assertTrue(measure.least() < measure.most() && measure.most() < 1e6, entry.id() + " " + measure.allowed());
			}
		}
	}

	@Test
	void wordsUsedInRulesArePlain() {
		kinds().forEach(k -> assertTrue(k.name().matches("[A-Z][A-Za-z]+"), k.name()));
		kinds().flatMap(k -> k.fields().stream()).forEach(f -> assertTrue(f.name().matches("[a-z][A-Za-z0-9]+"), f.name()));
		settings().forEach(s -> assertTrue(s.id().matches("[A-Z][A-Z0-9_]+"), s.id()));
	}

	private static void assertAllDifferent(String what, List<String> labels) {
		assertEquals(labels.stream().map(l -> l.toLowerCase(Locale.ROOT)).distinct().count(), labels.size(), what + ": " + labels);
	}
}
