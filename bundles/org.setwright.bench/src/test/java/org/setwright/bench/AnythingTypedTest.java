package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.bench.completing.Completion;
import org.setwright.bench.completing.Offer;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.BenchWord;
import org.setwright.engine.change.Watch;

/** Whatever is typed, the bench answers or says where it cannot follow, and changes nothing then. */
class AnythingTypedTest {
	private static final List<String> PIECES = new ArrayList<>(List.of("pump", "size", "lift", "coldest", "hose", "hoses", "1", "2", "99",
			"lamp", "lit", "yes", ":", ": ", ",", "{", "}",
			"[", "]", "(", ")", "\"", "+", "-", "*", "/", "=", "<", ">=", "in", "is", "ft", "°F", "F°", "ton", "add", "take out", "unknown", "none",
					"fitted", "speed", "alarm",
			"colour of light", "red", "rule", "rule \"x\"", "when", "then", "end", "Pump(", "Finding(", "name ==", "$s :", "propose(", "SPEED,",
					"@authority(", "shop practice",
			"not", "what is", "?", "#", "\n", "\t", "  ", ".", "..", "ü", "\u0000", "in rules/a", "jobs/0.yaml", "by size", "reach", "distance",
					"1e9", "-0", "1,000"));
	static {
		BenchWord.ALL.forEach(w -> PIECES.add(w.word()));
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 20261127 })
	void isAnsweredOrRefusedWithAPlace(long seed) {
		Random random = new Random(seed);
		Session session = Sample.bench();
		int followed = 0;
		int misread = 0;
		for (int i = 0; i < 3000; i++) {
			String line = line(random);
			Turn turn = session.say(line, Watch.PATIENT);
			if (turn.misread().isPresent()) {
				Misread why = turn.misread().get();
				assertTrue(why.start() <= why.end() && why.end() <= line.length(), () -> "outside of the line: " + line + " " + why.start() + "-" + why.end());
				assertTrue(why.line(line) >= 1 && why.column(line) >= 1 && !why.what().isBlank() && !why.remedy().isBlank(), line);
				assertEquals(session.lines(), turn.session().lines(), line);
				misread++;
			} else {
				followed++;
			}
			session = turn.session().changes().size() > 6 ? Sample.bench() : turn.session();
		}
		assertTrue(followed > 100 && misread > 1000, followed + " followed, " + misread + " misread");
	}

	@ParameterizedTest
	@ValueSource(longs = { 7 })
	void canBeCompletedAtAnyPlace(long seed) {
		Random random = new Random(seed);
		Session session = Sample.bench();
		for (int i = 0; i < 3000; i++) {
			String line = line(random);
			for (Offer offer : Completion.of(session.hand(), line)) {
				assertNotNull(offer.text());
				assertTrue(offer.from() >= 0 && offer.from() <= line.length(), () -> line + " from " + offer.from() + " " + offer.text());
			}
		}
	}

	private static String line(Random random) {
		StringBuilder line = new StringBuilder();
		int pieces = 1 + random.nextInt(6);
		for (int i = 0; i < pieces; i++) {
			line.append(PIECES.get(random.nextInt(PIECES.size()))).append(random.nextInt(3) == 0 ? "" : " ");
		}
		return line.toString();
	}
}
