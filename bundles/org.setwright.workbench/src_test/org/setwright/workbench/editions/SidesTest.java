package org.setwright.workbench.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.editions.compare.SideBySide;
import org.setwright.editions.git.InHand;
import org.setwright.editions.git.WorkInHand;
import org.setwright.editions.kept.EditionId;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.Who;

class SidesTest {
	private static final Kept FIRST = kept("a", List.of());
	private static final Kept SECOND = kept("b", List.of(FIRST.id()));
	private static final Kept THIRD = kept("c", List.of(SECOND.id()));
	private static final Ledger LEDGER = ledger(THIRD, SECOND, FIRST);

	private static Kept kept(String digit, List<EditionId> parents) {
		return new Kept(new EditionId(digit.repeat(40)), parents, new Who("Trine Aasen", ""), OffsetDateTime.parse("2026-04-02T10:00:00+02:00"), digit, digit);
	}

	private static Ledger ledger(Kept... history) {
		return new Ledger(Optional.of("main"), new WorkInHand(InHand.of(Map.of()), List.of()), List.of(history), Map.of(), List.of(), List.of());
	}

	@Test
	void oneEditionIsComparedWithTheOneBeforeIt() {
		assertEquals(Optional.of(new Sides(Optional.of(SECOND), Optional.of(THIRD))), Sides.of(List.of(Optional.of(THIRD)), LEDGER));
		assertEquals(Optional.of(new Sides(Optional.empty(), Optional.of(FIRST))), Sides.of(List.of(Optional.of(FIRST)), LEDGER));
	}

	@Test
	void theWorkInHandIsComparedWithTheLastEdition() {
		assertEquals(Optional.of(new Sides(Optional.of(THIRD), Optional.empty())), Sides.of(List.of(Optional.empty()), LEDGER));
		assertEquals(Optional.of(new Sides(Optional.empty(), Optional.empty())), Sides.of(List.of(Optional.empty()), ledger()));
	}

	@Test
	void severalAreComparedTheOldestWithTheNewestInWhateverOrderTheyWerePicked() {
		Optional<Sides> wanted = Optional.of(new Sides(Optional.of(FIRST), Optional.of(THIRD)));
		assertEquals(wanted, Sides.of(List.of(Optional.of(THIRD), Optional.of(FIRST)), LEDGER));
		assertEquals(wanted, Sides.of(List.of(Optional.of(FIRST), Optional.of(SECOND), Optional.of(THIRD)), LEDGER));
		assertEquals(Optional.of(new Sides(Optional.of(FIRST), Optional.empty())), Sides.of(List.of(Optional.of(FIRST), Optional.empty()), LEDGER));
		assertTrue(Sides.of(List.of(), LEDGER).isEmpty());
	}

	@Test
	void aSignInTheMarginTellsWhatBecameOfALine() {
		List<String> signs = SideBySide.of("same\nold\nsame too\ngone", "same\nnew\nsame too").rows().stream().map(SidePane::sign).toList();
		assertEquals(List.of("", SidePane.DIFFERS, "", SidePane.GONE), signs);
		assertEquals(List.of(SidePane.NEW, ""), SideBySide.of("same", "new\nsame").rows().stream().map(SidePane::sign).toList());
	}

	@Test
	void linesOfTheListSayInWordsWhatIsNotKeptAndWhatIsNotSigned() {
		Ledger work = new Ledger(Optional.of("main"), new WorkInHand(InHand.of(Map.of()), List.of("rules/valve.drl")), List.of(FIRST), Map.of(),
				List.of(), List.of());
		List<EditionLine> lines = EditionLine.of(work);
		assertEquals("not kept (1): rules/valve.drl", lines.get(0).cells().get(2));
		assertEquals(List.of("2026-04-02 10:00", "Trine Aasen", "a", "not signed"), lines.get(1).cells());
		assertEquals("everything is kept", EditionLine.of(LEDGER).get(0).cells().get(2));
	}
}
