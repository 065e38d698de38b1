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
}
