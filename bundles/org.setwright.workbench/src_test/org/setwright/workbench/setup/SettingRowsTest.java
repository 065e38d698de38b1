package org.setwright.workbench.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.setup.SettingRow.Mark;
import org.setwright.workbench.setup.SettingRows.Group;

class SettingRowsTest {

	@Test
	void aSettledSettingNamesItsRuleAndAuthority() {
		SettingRow row = row(rows(TestBook.LARCH_LANE, false), "changeover valve");
		assertEquals("energised in heating", row.value());
		assertEquals("table changeover-by-maker, row 1", row.rule());
		assertEquals("maker's instructions", row.authority());
		assertTrue(row.state().endsWith("outranks 1"), row.state());
	}

	@Test
	void aGapHasNoValueAndNoRule() {
		SettingRow row = row(rows(TestBook.LARCH_LANE, false), "schedule");
		assertEquals(Mark.GAP, row.mark());
		assertEquals("\u2013", row.value());
		assertEquals("", row.rule());
		assertTrue(row.open());
	}

	@Test
	void whatIsNotExpectedSaysWhatWas() {
		SettingRow row = row(rows(TestBook.QUARRY_HILL, false), "changeover valve");
		assertEquals(Optional.of("energised in heating"), row.expected());
		assertEquals(Optional.empty(), row(rows(TestBook.LARCH_LANE, false), "changeover valve").expected());
	}

	@Test
	void whatUnknownsCouldStillChangeIsSettledSoFar() {
		assertEquals(Mark.SETTLED_SO_FAR, row(rows(TestBook.QUARRY_HILL, false), "changeover valve").mark());
		assertEquals(Mark.SETTLED, row(rows(TestBook.LARCH_LANE, false), "auxiliary heat stages").mark());
	}

	@Test
	void settingsNotNeededAreListedOnlyWhenAskedFor() {
		assertFalse(contains(rows(TestBook.LARCH_LANE, false), "auxiliary heat source"));
		SettingRow row = row(rows(TestBook.LARCH_LANE, true), "auxiliary heat source");
		assertEquals(Mark.NOT_NEEDED, row.mark());
	}

	@Test
	void everySettingIsListedOnceWhenAllAreAskedFor() {
		long rows = rows(TestBook.LARCH_LANE, true).stream().mapToLong(g -> g.rows().size()).sum();
		assertEquals(Trade.catalogue().settings().size(), rows);
	}

	@Test
	void aChangeSaysWhatItWas() throws IOException {
		String text = Files.readString(TestBook.FOLDER.resolve(TestBook.LARCH_LANE)).replace("maker: Norrvik", "maker: Tamarack Air");
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, text);
		SettingRow row = row(SettingRows.of(Trade.catalogue(), typed.outcome(TestBook.LARCH_LANE).orElseThrow(),
				Optional.of(TestBook.outcome(TestBook.LARCH_LANE)), typed.job(TestBook.LARCH_LANE).orElseThrow(), false), "changeover valve");
		assertEquals("energised in cooling", row.value());
		assertEquals(Optional.of("energised in heating"), row.was());
	}

	@Test
	void equalAuthorityWithDifferentValuesShowsBoth() throws IOException {
		String table = Files.readString(TestBook.FOLDER.resolve("tables/changeover-by-maker.csv"))
				+ "Norrvik, energised in cooling, maker's instructions, \"sheet NV-13\", \"A later sheet.\"\n";
		Evaluation typed = TestBook.typing("tables/changeover-by-maker.csv", table);
		SettingRow row = row(SettingRows.of(Trade.catalogue(), typed.outcome(TestBook.LARCH_LANE).orElseThrow(), Optional.empty(),
				TestBook.job(TestBook.LARCH_LANE), false), "changeover valve");
		assertEquals(Mark.DISPUTED, row.mark());
		assertEquals("energised in heating or energised in cooling", row.value());
	}

	private static List<Group> rows(String job, boolean all) {
		return SettingRows.of(Trade.catalogue(), TestBook.outcome(job), Optional.empty(), TestBook.job(job), all);
	}

	private static boolean contains(List<Group> groups, String label) {
		return groups.stream().flatMap(g -> g.rows().stream()).anyMatch(r -> r.setting().label().equals(label));
	}

	private static SettingRow row(List<Group> groups, String label) {
		return groups.stream().flatMap(g -> g.rows().stream()).filter(r -> r.setting().label().equals(label)).findFirst()
				.orElseThrow();
	}
}
