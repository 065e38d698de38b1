package org.setwright.workbench.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.JobReader;
import org.setwright.trade.Trade;
import org.setwright.writing.live.LiveTally;
import org.setwright.writing.live.Tally;

class TallyWordsTest {
	private static final String RULE = "rule \"one\"\n@authority( shop practice )\n@because( \"Testing.\" )\n@source( common practice )\nwhen\n"
			+ "OutdoorUnit( stages == 1 )\nthen\npropose( COOL_STAGES, 1 );\nend\n";
	private final LiveTally live = new LiveTally(Trade.catalogue());

	private Tally count(String rules, String... jobs) {
		List<Book.RuleFile> files = List.of(new Book.RuleFile("rules/a.drl", rules));
		var cases = java.util.stream.IntStream.range(0, jobs.length)
				.mapToObj(i -> JobReader.read("jobs/" + i + ".yaml", "job: J" + i + "\noutdoor unit: " + jobs[i] + "\n", Trade.catalogue()).job()).toList();
		return live.count(new Book(Path.of(""), "b", Trade.catalogue(), files, List.of(), cases), () -> false).orElseThrow();
	}

	@Test
	void everyCountThatIsNotNoneIsNamed() {
		assertEquals(Optional.of("stands on 2 jobs \u00b7 held open on 1 \u00b7 silent on 1"),
				TallyWords.line(count(RULE, "{ stages: 1 }", "{ stages: 1 }", "fitted", "none"), "one"));
		assertEquals(Optional.of("stands on 1 job"), TallyWords.line(count(RULE, "{ stages: 1 }"), "one"));
	}

	@Test
	void aRuleNoJobMakesSpeakIsMarkedByAShapeAndWords() {
		assertEquals(Optional.of("\u25b3 no saved job makes it speak \u00b7 silent on 1"), TallyWords.line(count(RULE, "none"), "one"));
	}

	@Test
	void countsFromBeforeSaySo() {
		count(RULE, "{ stages: 1 }");
		Tally half = count(RULE.replace("== 1", "=="), "{ stages: 1 }");
		assertEquals(Optional.of("FROM BEFORE (it cannot be read now) \u00b7 stands on 1 job"), TallyWords.line(half, "one"));
		Tally apart = count(RULE.replace("when", "when Finding( name == NOBODY )"), "{ stages: 1 }");
		assertTrue(TallyWords.line(apart, "one").orElseThrow().startsWith("FROM BEFORE (the rules do not go together now)"));
	}

	@Test
	void nothingIsSaidBeforeTheFirstCountAndOfANewRuleThatItIsNotCounted() {
		assertEquals(Optional.empty(), TallyWords.line(Tally.NONE, "one"));
		assertEquals(Optional.of("not counted yet: this rule has never been readable"), TallyWords.line(count(RULE, "none"), "two"));
	}
}
