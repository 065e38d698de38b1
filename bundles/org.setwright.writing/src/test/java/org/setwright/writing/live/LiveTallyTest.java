package org.setwright.writing.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.engine.Reading;
import org.setwright.engine.Standing;
import org.setwright.trade.Trade;
import org.setwright.writing.Desk;

class LiveTallyTest {
	private static final String ONE = rule("one", "OutdoorUnit( stages == 1 )", "propose( COOL_STAGES, 1 );");
	private static final String TWO = rule("two", "OutdoorUnit( stages == 2 )", "propose( COOL_STAGES, 2 );");
	private static final String CODE = rule("never more than one", "OutdoorUnit( )", "propose( COOL_STAGES, 1 );").replace("shop practice", "\"code or safety\"");
	private final LiveTally live = new LiveTally(Trade.catalogue());

	private static Desk desk(String rules) {
		return Desk.with(rules).and("jobs/a.yaml", "job: A\noutdoor unit: { stages: 1 }\n").and("jobs/b.yaml", "job: B\noutdoor unit: { stages: 2 }\n")
				.and("jobs/c.yaml", "job: C\noutdoor unit: { maker: Norrvik }\n").and("jobs/d.yaml", "job: D\noutdoor unit: none\n");
	}

	private Tally count(Desk desk) {
		return live.count(desk.book(), () -> false).orElseThrow();
	}

	private static String said(RuleTally tally) {
		return tally.jobs().toString().replaceAll("jobs/|\\.yaml|[A-Z_]+=\\[\\](, )?", "") + (tally.stale() ? " stale" : "");
	}

	@Test
	void everyJobCountsForWhatBecomesOfTheRuleOnIt() {
		Tally tally = count(desk(ONE + TWO + CODE));
		assertEquals("{STANDS=[a], HELD_OPEN=[c], SILENT=[b, d]}", said(tally.of("one").orElseThrow()));
		assertEquals("{OUTRANKED=[b], HELD_OPEN=[c], SILENT=[a, d]}", said(tally.of("two").orElseThrow()));
		assertEquals("{STANDS=[a, b, c], SILENT=[d]}", said(tally.of("never more than one").orElseThrow()));
		assertEquals(Optional.empty(), tally.of("three"));
	}

	@Test
	void rulesAreCountedOnceTheShopHasDescribedTheirSettingAndAgainWhenItSaysOtherThings() {
		String misting = rule("mist", "OutdoorUnit( stages == 2 )", "propose( MISTING, DAILY );");
		assertFalse(count(desk(ONE + misting)).of("mist").isPresent());
		String settings = "settings:\n  - setting: misting\n    meaning: Wets the coil.\n    values: [off, daily]\n";
		assertEquals("{STANDS=[b], HELD_OPEN=[c], SILENT=[a, d]}", said(count(desk(ONE + misting).and("settings.yaml", settings)).of("mist").orElseThrow()));
		Tally without = count(desk(ONE + misting).and("settings.yaml", settings.replace("[off, daily]", "[off]")));
		assertTrue(without.of("mist").orElseThrow().stale());
		assertFalse(without.of("one").orElseThrow().stale());
		Tally faulty = count(desk(ONE + misting).and("settings.yaml", settings + "    needed: OutdorUnit( )\n"));
		assertEquals("{STANDS=[b], HELD_OPEN=[c], SILENT=[a, d]}", said(faulty.of("mist").orElseThrow()));
	}

	@Test
	void aDisputeIsNeitherWonNorLost() {
		Tally tally = count(desk(TWO + CODE.replace("\"code or safety\"", "shop practice")));
		assertEquals("{DISPUTED=[b], HELD_OPEN=[c], SILENT=[a, d]}", said(tally.of("two").orElseThrow()));
	}

	@Test
	void aChangeIsCountedAndARuleThatIsGoneIsNot() {
		count(desk(ONE + TWO + CODE));
		Tally tally = count(desk("// the second rule is gone\n" + ONE.replace("== 1", ">= 1") + CODE));
		assertEquals("{STANDS=[a, b], HELD_OPEN=[c], SILENT=[d]}", said(tally.of("one").orElseThrow()));
		assertEquals(Optional.empty(), tally.of("two"));
		assertEquals("{STANDS=[a, b, c], SILENT=[d]}", said(tally.of("never more than one").orElseThrow()));
	}

	@Test
	void aHalfWrittenRuleKeepsItsLastCountsAndTheOthersGoOn() {
		count(desk(ONE + TWO + CODE));
		Tally tally = count(desk(ONE + TWO.replace("stages == 2", "stages ==") + CODE.replace("OutdoorUnit( )", "OutdoorUnit( stages == 1 )")));
		assertEquals("{STANDS=[b], HELD_OPEN=[c], SILENT=[a, d]} stale", said(tally.of("two").orElseThrow()));
		assertEquals("{STANDS=[a], HELD_OPEN=[c], SILENT=[b, d]}", said(tally.of("never more than one").orElseThrow()));
		Tally mended = count(desk(ONE + TWO.replace("stages == 2", "stages == 1") + CODE));
		assertEquals("{OUTRANKED=[a], HELD_OPEN=[c], SILENT=[b, d]}", said(mended.of("two").orElseThrow()));
	}

	@Test
	void aHalfWrittenRuleIsKnownAgainUnderAHalfWrittenName() {
		count(desk(ONE + TWO));
		Tally tally = count(desk(ONE + TWO.replace("\"two\"", "\"two st\"").replace("stages == 2", "stages ==")));
		assertEquals("{STANDS=[b], HELD_OPEN=[c], SILENT=[a, d]} stale", said(tally.of("two st").orElseThrow()));
		assertEquals(Optional.empty(), tally.of("two"));
	}

	@Test
	void aRuleThatWasNeverWholeHasNoCounts() {
		Tally tally = count(desk(ONE + TWO.replace("stages == 2", "stages ==")));
		assertEquals(Optional.empty(), tally.of("two"));
		assertTrue(tally.of("one").isPresent());
	}

	@Test
	void rulesThatDoNotGoTogetherLeaveEverythingAsItWasAndSayWhy() {
		count(desk(ONE + TWO));
		Tally tally = count(desk(ONE + TWO.replace("when", "when Finding( name == NOBODY_MAKES_IT )")));
		assertTrue(tally.stale().orElseThrow().contains("NOBODY_MAKES_IT"), tally.stale().toString());
		assertEquals("{STANDS=[a], HELD_OPEN=[c], SILENT=[b, d]} stale", said(tally.of("one").orElseThrow()));
		assertEquals(Optional.empty(), count(desk(ONE + TWO)).stale());
	}

	@Test
	void aChangedJobIsCountedAnew() {
		count(desk(ONE + TWO));
		Tally tally = count(desk(ONE + TWO).and("jobs/a.yaml", "job: A\noutdoor unit: { stages: 2 }\n"));
		assertEquals("{SILENT=[a, b, d], HELD_OPEN=[c]}".length(), said(tally.of("one").orElseThrow()).length());
		assertEquals("{STANDS=[a, b], HELD_OPEN=[c], SILENT=[d]}", said(tally.of("two").orElseThrow()));
	}

	@Test
	void rowsOfATableCountAndABrokenTableKeepsItsLastCounts() {
		String table = "outdoor unit maker,=> cooling stages,authority,source\nNorrvik,2,shop practice,common practice\n";
		Tally tally = count(desk(ONE).and("tables/t.csv", table));
		assertEquals("{STANDS=[c], HELD_OPEN=[a, b], SILENT=[d]}", said(tally.of("table t, row 1").orElseThrow()));
		tally = count(desk(ONE).and("tables/t.csv", table.replace("outdoor unit maker", "outdoor unit makr")));
		assertEquals("{STANDS=[c], HELD_OPEN=[a, b], SILENT=[d]} stale", said(tally.of("table t, row 1").orElseThrow()));
		assertFalse(tally.of("one").orElseThrow().stale());
	}

	private static String changed(String text, Random random) {
		List<String> words = List.of(" == ", " != ", "YES", "NO", "shop practice", "factory default");
		int word = random.nextInt(words.size());
		int at = text.indexOf(words.get(word), random.nextInt(text.length()));
		return at < 0 ? text : text.substring(0, at) + words.get(word ^ 1) + text.substring(at + words.get(word).length());
	}

	@Test
	void aCountThatIsCancelledSaysNothingAndTheNextIsRight() {
		assertEquals(Optional.empty(), live.count(desk(ONE).book(), () -> true));
		assertEquals("{STANDS=[a], HELD_OPEN=[c], SILENT=[b, d]}", said(count(desk(ONE)).of("one").orElseThrow()));
	}

	@Test
	void afterManyChangesOfTheStarterBookTheCountsAreThoseOfAFreshCount() {
		Book book = BookReader.read(Path.of("../../rules/starter"), Trade.catalogue());
		Random random = new Random(20261127);
		live.count(book, () -> false);
		int compared = 0;
		for (int i = 0; i < 40 && compared < 12; i++) {
			Book.RuleFile file = book.ruleFiles().get(random.nextInt(book.ruleFiles().size()));
			Book changed = book.withRules(new Book.RuleFile(file.path(), changed(file.text(), random)));
			Tally counted = live.count(changed, () -> false).orElseThrow();
			boolean sound = Reading.of(changed).problems().isEmpty() && counted.stale().isEmpty();
			if (sound && !changed.equals(book)) {
				Map<String, RuleTally> fresh = new LiveTally(Trade.catalogue()).count(changed, () -> false).orElseThrow().all();
				fresh.forEach((name, tally) -> assertEquals(tally.jobs(), counted.of(name).orElseThrow().jobs(), name));
				assertEquals(fresh.keySet(), counted.all().keySet());
				compared++;
				book = changed;
			}
		}
		assertEquals(12, compared);
		assertEquals(0, live.count(book, () -> false).orElseThrow().of("Maker not looked up: take cooling, and check").orElseThrow().count(Standing.DISPUTED));
	}
}
