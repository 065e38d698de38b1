package org.setwright.check.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setwright.book.BookReader;
import org.setwright.engine.Edition;
import org.setwright.engine.explaining.ReadAloud;
import org.setwright.trade.Trade;

/** A mistake in a rule is heard when the rule is read aloud: no two meanings sound the same. */
class HeardMistakesTest {
	@Test
	void everyMistakeInTheStarterBookChangesWhatIsRead() {
		Edition edition = Edition.compile(BookReader.read(Path.of("../../rules/starter"), Trade.catalogue())).edition().orElseThrow();
		List<Mistake> mistakes = Mistakes.in(List.copyOf(edition.rules())).stream().filter(m -> m.instead().isPresent()).toList();
		assertTrue(mistakes.size() > 1500, () -> "only " + mistakes.size());
		assertEquals("", mistakes.stream().filter(HeardMistakesTest::unheard)
				.map(m -> m.at() + " " + m.kind().words() + ", " + m.sentence() + ": " + ReadAloud.of(m.rule()).text()).collect(Collectors.joining("\n")));
	}

	private static boolean unheard(Mistake mistake) {
		return ReadAloud.of(mistake.rule()).text().equals(ReadAloud.of(mistake.instead().orElseThrow()).text());
	}
}
