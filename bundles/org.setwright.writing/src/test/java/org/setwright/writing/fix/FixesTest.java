package org.setwright.writing.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.JobReader;
import org.setwright.book.Problem;
import org.setwright.book.ShopSettingDraft;
import org.setwright.trade.Trade;
import org.setwright.writing.Desk;
import org.setwright.writing.shop.NewSetting;
import org.setwright.writing.text.TextEdit;

class FixesTest {
	private static final String ANY = "OutdoorUnit( )";
	private static final String SAYS = "propose( COOL_STAGES, 1 );";

	/** @return the fixes of the only problem */
	private static List<Fix> fixes(Desk desk) {
		List<Problem> problems = desk.problems();
		assertEquals(1, problems.size(), problems.toString());
		return new Fixes(desk.manuscript()).of(problems.get(0), desk.text(problems.get(0).at().file()));
	}

	private static Desk mended(Desk desk, String title) {
		List<Fix> fixes = fixes(desk);
		Fix fix = fixes.stream().filter(f -> f.title().equals(title)).findFirst()
				.orElseThrow(() -> new AssertionError("no \"" + title + "\" among " + fixes.stream().map(Fix::title).toList()));
		return desk.apply(fix.edits());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			OutdorUnit( stages == 2 ) | propose( COOL_STAGES, 1 ); | Write OutdoorUnit
			OutdoorUnit( stagse == 2 ) | propose( COOL_STAGES, 1 ); | Write stages
			OutdoorUnit( kind == AIR_SORCE_HEAT_PUMP ) | propose( COOL_STAGES, 1 ); | Write AIR_SOURCE_HEAT_PUMP
			OutdoorUnit( kind == "air conditioner" ) | propose( COOL_STAGES, 1 ); | Write AIR_CONDITIONER
			OutdoorUnit( stages = 2 ) | propose( COOL_STAGES, 1 ); | Write ==
			OutdoorUnit( stages == null ) | propose( COOL_STAGES, 1 ); | Write UNKNOWN
			OutdoorUnit( $steps : stages ) | propose( COOL_STAGES, $step ); find( X ); | Write $steps
			OutdoorUnit( ) | propose( COOL_STAGE, 1 ); | Write COOL_STAGES
			OutdoorUnit( ) | propose( COOL_STAGES, 1 ) | Add the missing ;
			OutdoorUnit( ) | propose( COOL_STAGES, 1; | Add the missing )
			OutdoorUnit( ) | propose( COOL_STAGES 1 ); | Add the missing ,
			Building( floorArea > 1500 ) | propose( COOL_STAGES, 1 ); | Write "1500 ft2"
			Finding( name == HEET_PUMP ) | propose( COOL_STAGES, 1 ); | Write HEAT_PUMP
			""")
	void oneKeyMendsASlip(String when, String then, String title) {
		Desk desk = Desk.with(rule("typed", when, then) + "\n" + rule("finds", ANY, "find( HEAT_PUMP );"));
		assertEquals(List.of(), mended(desk, title).problems());
	}

	@Test
	void anAnnotationWithAnApostropheGetsQuotationMarks() {
		String quoted = rule("typed", ANY, SAYS).replace("shop practice", "\"maker's instructions\"");
		Desk desk = Desk.with(quoted.replace("\"maker's instructions\"", "maker's instructions"));
		assertEquals(quoted, mended(desk, "Write \"maker's instructions\"").text(Desk.FILE));
		assertEquals(List.of(), Desk.with(quoted).problems());
	}

	@Test
	void onlyTheSlipItselfIsReplaced() {
		Desk desk = Desk.with("// OutdorUnit is mentioned here\n" + rule("OutdorUnit", "OutdorUnit( )", SAYS));
		String after = mended(desk, "Write OutdoorUnit").text(Desk.FILE);
		assertEquals("// OutdorUnit is mentioned here\n" + rule("OutdorUnit", "OutdoorUnit( )", SAYS), after);
	}

	@ParameterizedTest
	@CsvSource({ "authority, Add the authority: code or safety", "source, Add the source: common practice" })
	void aMissingAnnotationIsAddedInItsPlace(String word, String title) {
		String whole = rule("typed", ANY, SAYS).replace("shop practice", "\"code or safety\"");
		String without = whole.replaceFirst(" *@" + word + "[^\\n]*\\n", "");
		assertEquals(whole, mended(Desk.with(without), title).text(Desk.FILE));
	}

	@Test
	void aMissingReasonIsLeftForThePersonToWrite() {
		String without = rule("typed", ANY, SAYS).replaceFirst(" *@because[^\\n]*\\n", "");
		Fix fix = fixes(Desk.with(without)).get(0);
		assertEquals("Add the reason", fix.title());
		Desk desk = Desk.with(without).apply(fix.edits());
		assertEquals('"', desk.text(Desk.FILE).charAt(fix.cursor()));
		assertEquals('"', desk.text(Desk.FILE).charAt(fix.cursor() - 1));
		assertEquals("The rule \"typed\" has no @because.", desk.problems().get(0).what());
		assertEquals(List.of("Write the reason here"), fixes(desk).stream().map(Fix::title).toList());
	}

	@Test
	void anAuthorityIsWrittenSoThatItCanBeRead() {
		Desk desk = Desk.with(rule("typed", ANY, SAYS).replace("shop practice", "makers instructions"));
		assertEquals(List.of(), mended(desk, "Write \"maker's instructions\"").problems());
	}

	@Test
	void aMissingEndIsAddedBehindTheRuleAndNotInTheNext() {
		String first = rule("first", ANY, SAYS);
		Desk desk = Desk.with(first.replace("end\n", "") + "\n// the second\n" + rule("second", ANY, SAYS));
		assertEquals(first + "\n// the second\n" + rule("second", ANY, SAYS), mended(desk, "Add the missing end").text(Desk.FILE));
	}

	@Test
	void aSettingTheCatalogueDoesNotHaveBecomesANoteWithNothingLost() {
		Desk desk = mended(Desk.with(rule("typed", ANY, "propose( MISTING_HOURS, 6 );")), "Say it as a note on the job instead");
		assertEquals(List.of(), desk.problems());
		assertTrue(desk.text(Desk.FILE).contains("caution( NOTE, \"Set misting hours to 6.\" );"), desk.text(Desk.FILE));
	}

	@Test
	void aSettingThatExistsIsNotTurnedIntoANote() {
		assertFalse(fixes(Desk.with(rule("typed", ANY, "find( X ); propose( COOL_STAGES, 77 );"))).stream().anyMatch(f -> f.title().contains("note")));
	}

	@Test
	void aSettingTheCatalogueDoesNotHaveBecomesOneOfTheShopsOwn() {
		Desk desk = Desk.with(rule("one", ANY, "propose( MISTING, ONCE_A_DAY );") + "\n" + rule("two", "not OutdoorUnit( )", "propose( MISTING, OFF );"));
		Fix fix = new Fixes(desk.manuscript()).of(desk.problems().get(0), desk.text(Desk.FILE)).stream().filter(f -> f.setting().isPresent()).findFirst()
				.orElseThrow();
		assertEquals("Make \"misting\" a setting of the shop's own\u2026", fix.title());
		ShopSettingDraft guessed = fix.setting().get();
		assertEquals(new ShopSettingDraft("misting", "", "", "once a day, off", ""), guessed);
		NewSetting.Added refused = new NewSetting(desk.manuscript()).added(guessed);
		assertTrue(refused.refusals().get(0).startsWith("Nobody can tell what this setting is for."), refused.toString());
		desk.apply(new NewSetting(desk.manuscript()).added(new ShopSettingDraft("misting", "", "Wets the coil.", guessed.values(), "")).edits());
		assertEquals(List.of(), desk.problems());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			propose( MISTING_HOURS, 6 ); | propose( MISTING_HOURS, 2 ); | 2 to 6
			propose( MISTING, YES ); | propose( MISTING, YES ); | yes or no
			propose( MISTING_TIME, "20 min" ); | propose( MISTING_TIME, "1 h" ); | 20 min to 1 h
			propose( MISTING_TIME, "20 min" ); | propose( MISTING_TIME, OFF ); | 20 min, off
			""")
	void whatIsProposedIsWhatMayBeSet(String one, String two, String values) {
		Desk desk = Desk.with(rule("one", ANY, one) + "\n" + rule("two", "not OutdoorUnit( )", two));
		String word = one.replaceFirst("propose\\( (\\w+).*", "$1");
		assertEquals(values, new NewSetting(desk.manuscript()).guess(word).values());
	}

	@Test
	void aHeadingOfATableBecomesASettingToo() {
		Desk desk = Desk.with("").and("tables/t.csv", "outdoor unit maker,=> misting,authority,source\nNorrvik,off,shop practice,x\n");
		Fix fix = fixes(desk).stream().filter(f -> f.setting().isPresent()).findFirst().orElseThrow();
		assertEquals(new ShopSettingDraft("misting", "", "", "off", ""), fix.setting().get());
	}

	@Test
	void aValueIsAddedToASettingOfTheShopsOwn() {
		Desk desk = Desk.with(rule("typed", ANY, "propose( MISTING, TWICE_A_DAY );"))
				.and("settings.yaml", "settings:\n  - setting: misting\n    meaning: Wets the coil.\n    values: [off, once a day]\n");
		mended(desk, "Add \"twice a day\" to the values of misting");
		assertEquals(List.of(), desk.problems());
		desk.and("tables/t.csv", "outdoor unit maker,=> misting,authority,source\nNorrvik,at night,shop practice,x\n");
		mended(desk, "Add \"at night\" to the values of misting");
		assertEquals(List.of(), desk.problems());
		assertTrue(desk.text("settings.yaml").contains("[off, once a day, twice a day, at night]"), desk.text("settings.yaml"));
	}

	@Test
	void theTradesOwnSettingsGetNoValues() {
		assertFalse(fixes(Desk.with(rule("typed", ANY, "propose( HUMIDIFIER_RUNS, AT_NIGHT );"))).stream().anyMatch(f -> f.title().startsWith("Add")));
	}

	@Test
	void conditionsUnderWhichItIsNeededAreCheckedBeforeAnythingIsWritten() {
		NewSetting adding = new NewSetting(Desk.with("").manuscript());
		assertTrue(adding.added(new ShopSettingDraft("misting", "", "Wets the coil.", "yes or no", "OutdorUnit( )")).refusals().get(0).contains("OutdoorUnit"));
		assertEquals(List.of(), adding.added(new ShopSettingDraft("misting", "", "Wets the coil.", "yes or no", "OutdoorUnit( )")).refusals());
	}

	@Test
	void aLineTheLanguageDoesNotNeedIsDeleted() {
		Desk desk = Desk.with("import java.util.List;\n" + rule("typed", ANY, SAYS));
		assertEquals(rule("typed", ANY, SAYS), mended(desk, "Delete this line").text(Desk.FILE));
	}

	@Test
	void aWordNothingIsNearIsLeftToThePerson() {
		assertEquals(List.of(), fixes(Desk.with(rule("typed", "Zeppelin( )", SAYS))));
	}

	@Test
	void textThatHasChangedMeanwhileIsNotTouched() {
		Desk desk = Desk.with(rule("typed", "OutdorUnit( )", SAYS));
		Problem problem = desk.problems().get(0);
		assertEquals(List.of(), new Fixes(desk.manuscript()).of(problem, "// nothing is left\n"));
		assertEquals(List.of(), new Fixes(desk.manuscript()).of(problem, rule("typed", "OutdoorUnit( )", SAYS)));
	}

	@Test
	void cellsOfATableAreMendedToo() {
		Desk desk = Desk.with("").and("tables/t.csv", "outdoor unit makr,=> changeover valve,authority,source\nNorrvik,energised in heating,shop practice,x\n");
		assertEquals(List.of(), mended(desk, "Write outdoor unit maker").problems());
		desk.and("tables/t.csv", "outdoor unit maker,=> changeover valve,authority,source\nNorrvik,energised in heeting,shop practice,x\n");
		assertEquals(List.of(), mended(desk, "Write energised in heating").problems());
	}

	@Test
	void namesAndChoicesOfAJobAreMendedToo() {
		String job = "job: A\noutdoor unit: { kynd: air conditioner }\nindoor unit:\n  kind: fornace\nhumidifyer: none\n";
		for (String title : List.of("Write kind", "Write furnace", "Write humidifier")) {
			for (Problem problem : JobReader.read("jobs/a.yaml", job, Trade.catalogue()).problems()) {
				for (Fix fix : new Fixes(Desk.with("").manuscript()).of(problem, job)) {
					job = fix.title().equals(title) ? TextEdit.apply(job, fix.edits().get("jobs/a.yaml")) : job;
				}
			}
		}
		assertEquals(List.of(), JobReader.read("jobs/a.yaml", job, Trade.catalogue()).problems());
	}
}
