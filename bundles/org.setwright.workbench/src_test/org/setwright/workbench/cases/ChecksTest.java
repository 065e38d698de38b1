package org.setwright.workbench.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.Standing;
import org.setwright.workbench.desk.TestBook;

class ChecksTest {
	private final CaseCheck check = Checks.of(TestBook.saved());

	@Test
	void whatWasWorkedOutIsHeldAgainstWhatIsExpected() {
		assertEquals(List.of(0L, 0L, 1L), check.jobs().stream().map(j -> j.count(Standing.NOT_MET)).toList());
		assertEquals(4, check.count(Standing.MET));
		assertTrue(check.count(Standing.NOT_ASKED) > 5);
	}

	@Test
	void withAMistakeInTheRulesEveryJobSaysSo() {
		CaseCheck broken = Checks.of(TestBook.typing("rules/stages.drl", "rule"));
		assertEquals(3, broken.jobs().size());
		assertTrue(broken.jobs().stream().allMatch(j -> j.outcome().isEmpty() && j.fault().contains("mistakes")));
		assertEquals("The rules have mistakes, so nothing runs. See Problems.", CaseColumns.standing(new CaseLine.OfJob(broken.jobs().get(0))));
	}

	@Test
	void whatHasBeenRunAgainTakesThePlaceOfWhatWas() {
		CaseCheck again = new CaseCheck(List.of(Checks.of(TestBook.saved()).jobs().get(1)));
		assertEquals(check, Checks.with(check, again));
		assertEquals(again.jobs().get(0), Checks.with(check, again).jobs().get(1));
	}

	@Test
	void theFilterShowsWhatIsTickedAndFound() {
		CaseFilter filter = CaseFilter.AT_FIRST;
		assertEquals(3, filter.jobs(check.jobs()).size());
		assertEquals(1, filter.with(Standing.MET, false).jobs(check.jobs()).size());
		assertEquals(0, filter.with(Standing.MET, false).with(Standing.NOT_MET, false).jobs(check.jobs()).size());
		assertEquals(List.of("auxiliary heat stages"), filter.searching("LARCH stages").points(check.jobs().get(0)).stream().map(l -> l.point().what()).toList());
		assertFalse(filter.with(Standing.NOT_ASKED, true).points(check.jobs().get(0)).equals(filter.points(check.jobs().get(0))));
	}

	@Test
	void aJobThatDidNotRunIsShownWhateverIsTicked() {
		CaseCheck broken = Checks.of(TestBook.typing("rules/stages.drl", "rule"));
		assertEquals(3, new CaseFilter(java.util.Set.of(), "").jobs(broken.jobs()).size());
		assertEquals(1, new CaseFilter(java.util.Set.of(), "quarry").jobs(broken.jobs()).size());
	}

	@Test
	void onlyWhatIsBeingTypedIntoChanges() throws java.io.IOException {
		assertEquals(java.util.Set.of(), Checks.changed(check, Checks.of(TestBook.saved())));
		String rules = java.nio.file.Files.readString(TestBook.FOLDER.resolve("rules/heat-pump.drl"));
		CaseCheck typed = Checks.of(TestBook.typing("rules/heat-pump.drl", rules.replace("CHANGEOVER_VALVE, ENERGISED_IN_COOLING", "CHANGEOVER_VALVE, ENERGISED_IN_HEATING")));
		java.util.Set<String> changed = Checks.changed(check, typed);
		assertTrue(changed.contains(TestBook.QUARRY_HILL + "\nchangeover valve"), changed.toString());
		CaseFilter filter = CaseFilter.AT_FIRST.limitedTo(java.util.Optional.of(changed));
		assertEquals(List.of("changeover valve"), filter.points(typed.jobs().get(2)).stream().map(l -> l.point().what()).toList());
		assertTrue(filter.with(Standing.NOT_ASKED, true).jobs(typed.jobs()).size() < 3, "other jobs are as they were");
		assertEquals(3, filter.limitedTo(java.util.Optional.empty()).jobs(typed.jobs()).size());
	}
}
