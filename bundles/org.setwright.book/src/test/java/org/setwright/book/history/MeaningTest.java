package org.setwright.book.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.book.history.Mapping.Column;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/** What columns may mean, and how a file begins. */
class MeaningTest {
	private static final Catalogue CATALOGUE = Trade.catalogue();

	@Test
	void everyMeaningIsFoundByItsOwnNameAndSaysWhatItIs() {
		List<Meaning> all = Meaning.all(CATALOGUE);
		for (Meaning meaning : all) {
			assertEquals(Optional.of(meaning), Meaning.of(meaning.name(), CATALOGUE), meaning.name());
			assertTrue(!meaning.says().isBlank() && !meaning.allowed().isBlank(), meaning.name());
		}
		assertEquals(all.size(), new HashSet<>(all.stream().map(Meaning::name).toList()).size());
		assertEquals("ignore", all.get(0).name());
		assertEquals(Optional.empty(), Meaning.of("wire 1 colou", CATALOGUE));
		assertEquals(Optional.of("wire 1 colour"), Meaning.near("wire 1 colou", CATALOGUE));
	}

	@Test
	void aQuantityHasUnitsAndAChoiceHasNone() {
		assertEquals(List.of("ft2", "m2"), Meaning.of("building floor area", CATALOGUE).orElseThrow().units().stream().sorted().toList());
		assertEquals(List.of(), Meaning.of("outdoor unit kind", CATALOGUE).orElseThrow().units());
		assertEquals(List.of(), Meaning.of("outdoor unit COP at 47 °F", CATALOGUE).orElseThrow().units());
	}

	@Test
	void aCellIsReadAsItsColumnSaysOrItIsSaidWhatIsWrong() {
		Meaning area = Meaning.of("building floor area", CATALOGUE).orElseThrow();
		assertTrue(area.fault("Area", new Column("building floor area"), "1,500", CATALOGUE).orElseThrow().what().contains("unit"));
		assertEquals(Optional.empty(), area.fault("Area", new Column("building floor area", Map.of(), "ft2"), "1,500", CATALOGUE));
		Meaning kind = Meaning.of("outdoor unit kind", CATALOGUE).orElseThrow();
		Column column = new Column("outdoor unit kind");
		assertEquals("Type", kind.fault("Type", column, "HP", CATALOGUE).orElseThrow().column());
		assertEquals(Optional.empty(), kind.fault("Type", column.reading("HP", "air-source heat pump"), "hp", CATALOGUE));
		assertTrue(kind.fault("Type", column.reading("HP", "air-source heat pump").reading("hp", ""), "HP", CATALOGUE).isPresent(), "taken back");
	}

	@Test
	void aMappingIsWrittenSoThatItReadsBackTheSame() {
		List<String> headings = List.of("Customer", "Area: m", "Type", "Odd, {one}");
		Mapping mapping = Mapping.guess(headings, CATALOGUE).with("customer", new Column("job"))
				.with("Area: m", new Column("building floor area", Map.of(), "m2"))
				.with("Type", new Column("outdoor unit kind").reading("HP, new", "air-source heat pump").reading("yes", "air conditioner"));
		Mapping.Read read = Mapping.read("m.yaml", mapping.text(headings), CATALOGUE);
		assertEquals(List.of(), read.problems());
		assertEquals(mapping, read.mapping());
	}

	@Test
	void aPreviewHoldsTheFirstRowsAndSaysWhetherThereAreMore() throws IOException {
		Preview preview = HistoryImport.preview(new StringReader("a,b\n1,x\n2,x\n,y\n3\n"), 3);
		assertEquals(List.of("a", "b"), preview.headings());
		assertEquals(List.of(List.of("1", "x"), List.of("2", "x"), List.of("", "y")), preview.rows());
		assertTrue(preview.more());
		assertEquals(List.of("x", "y"), preview.cells(1));
		assertEquals(new Preview(List.of("a"), List.of(List.of("1")), false), HistoryImport.preview(new StringReader("a\n1\n"), 3));
		assertTrue(assertThrows(IOException.class, () -> HistoryImport.preview(new StringReader("a,\n1,2\n"), 3)).getMessage().contains("heading"));
	}

	@Test
	void lettersThatAreNotUtf8AreSaid() {
		byte[] latin = "job\nM\u00FChle\n".getBytes(StandardCharsets.ISO_8859_1);
		InputStreamReader reader = new InputStreamReader(new ByteArrayInputStream(latin), StandardCharsets.UTF_8.newDecoder());
		assertTrue(assertThrows(IOException.class, () -> HistoryImport.preview(reader, 9)).getMessage().contains("UTF-8"));
	}
}
