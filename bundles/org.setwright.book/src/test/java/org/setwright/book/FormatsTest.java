package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;

/** Holds FORMATS.md and the catalogue to what the readers do. */
class FormatsTest {
	private static final Pattern SAMPLE = Pattern.compile("```(yaml|csv)( \\S+)?\\n(.*?)```", Pattern.DOTALL);

	@Test
	void everySampleOfTheDescriptionIsSound() throws IOException {
		List<MatchResult> samples = SAMPLE.matcher(Files.readString(Path.of("FORMATS.md"))).results().toList();
		assertEquals(5, samples.size());
		for (MatchResult sample : samples) {
			assertEquals(List.of(), problems(sample), sample.group(3));
		}
	}

	private static List<Problem> problems(MatchResult sample) {
		if (sample.group(1).equals("csv")) {
			return TableReader.read("tables/a.csv", sample.group(3)).problems();
		} else if (" book.yaml".equals(sample.group(2))) {
			return BookDetails.read(sample.group(3)).problems();
		} else if ((" " + ShopSettings.FILE).equals(sample.group(2))) {
			return ShopSettingsReader.read(sample.group(3), Trade.catalogue()).problems();
		}
		return JobReader.read("jobs/a.yaml", sample.group(3), Trade.catalogue()).problems();
	}

	@Test
	void noNameOfAKindIsAWordOfTheFile() {
		List<String> names = new ArrayList<>(JobKeys.ALL);
		stated().forEach(k -> Stream.of(k.key(), k.label()).distinct().forEach(names::add));
		assertEquals(names.stream().map(Keys::normal).distinct().toList(), names, "each once, in small letters");
	}

	@Test
	void noAnswerIsTheWordForUnknown() {
		stated().flatMap(k -> k.fields().stream()).forEach(f -> assertFree(f.domain(), f.label(), List.of(JobKeys.UNKNOWN, "null", "~")));
	}

	@Test
	void noValueOfASettingIsTheWordForAnExpectation() {
		List<String> words = new ArrayList<>(ExpectationText.WORDS);
		words.addAll(List.of(JobKeys.UNKNOWN, "null", "~"));
		Trade.catalogue().settings().forEach(s -> assertFree(s.domain(), s.label(), words));
	}

	@Test
	void noSettingIsCalledLikeAList() {
		assertTrue(Trade.catalogue().settings().stream().noneMatch(s -> ItemList.keys().contains(s.label())));
	}

	@Test
	void theNamesOfAKindsFieldsDiffer() {
		stated().forEach(k -> assertEquals(k.fields().size(), k.fields().stream().map(f -> Keys.normal(f.label())).distinct().count(), k.label()));
	}

	@Test
	void everyValueToOfferIsReadAsItIsWritten() {
		stated().flatMap(k -> k.fields().stream()).forEach(f -> f.domain().listed()
				.forEach(v -> assertEquals(v, f.domain().read(v.text()).orElseThrow(), f.label())));
	}

	private static void assertFree(Domain domain, String label, List<String> words) {
		assertTrue(domain.listed().stream().noneMatch(v -> words.contains(Keys.normal(v.text()))), label);
	}

	private static Stream<FactKind> stated() {
		return Trade.catalogue().kinds().stream().filter(k -> !k.calculated());
	}
}
