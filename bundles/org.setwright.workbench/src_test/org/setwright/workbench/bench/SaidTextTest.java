package org.setwright.workbench.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.bench.Session;
import org.setwright.bench.Turn;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Tone;
import org.setwright.book.Book;
import org.setwright.engine.Edition;
import org.setwright.engine.change.Watch;
import org.setwright.trade.Trade;

class SaidTextTest {
	private final SaidText said = new SaidText();

	@Test
	void aLineAndItsRowsBecomeLinesOfText() {
		List<SaidText.Line> lines = said.add(new Told("why x", List.of(new Row(0, Tone.PLAIN, "because", "rules/a.drl:3:1"),
				new Row(1, Tone.QUIET, "so", "")), false));
		assertEquals("why x\nbecause   rules/a.drl:3:1\nso\n", said.text());
		assertEquals(List.of(Optional.empty(), Optional.of(Tone.PLAIN), Optional.of(Tone.QUIET)), lines.stream().map(SaidText.Line::tone).toList());
		assertEquals(List.of(0, 1, 2), lines.stream().map(SaidText.Line::depth).toList());
		assertEquals("rules/a.drl:3:1", said.text().substring(lines.get(1).link(), lines.get(1).end()));
	}

	@Test
	void theLineAtAPlaceIsFound() {
		said.add(new Told("one", List.of(new Row(0, Tone.PLAIN, "two", "")), false));
		assertEquals(0, said.at(2).orElseThrow().start());
		assertEquals(4, said.at(5).orElseThrow().start());
		said.clear();
		assertEquals(Optional.empty(), said.at(0).map(SaidText.Line::start));
	}

	@Test
	void aLineThatCannotBeFollowedSaysWhere() {
		Told told = told("outdoor unit stages: 9");
		assertTrue(told.failed());
		assertEquals("column 22, at \u201c9\u201d: \"9\" is out of bounds for stages.", told.rows().get(0).words());
		assertEquals("Write a whole number from 1 to 2.", told.rows().get(1).words());
		Told several = told("rule \"x\" @authority( shop practice ) @because( \"b\" ) @source( s )\nwhen Pomp( ) then propose( COOL_STAGES, 1 ); end");
		assertTrue(several.rows().get(0).words().startsWith("line 2, column 6, at \u201cPomp\u201d: There is no fact"), several.rows().get(0).words());
		assertFalse(told("outdoor unit stages: 1").failed());
	}

	private static Told told(String line) {
		Book book = Book.empty(java.nio.file.Path.of("."), Trade.catalogue());
		Edition edition = Edition.compile(book).edition().orElseThrow();
		Turn turn = Session.on(new Ground(book, edition, Optional.empty())).say(line, Watch.PATIENT);
		return Told.of(line, turn);
	}
}
