package org.setwright.workbench.fitness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.strength.Mistake;
import org.setwright.check.strength.Strength;
import org.setwright.engine.Edition;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;

class FitnessLinesTest {
	private static final Edition EDITION = TestBook.saved().rules().edition().orElseThrow();
	private static final List<JobCase> JOBS = TestBook.saved().book().jobs();
	private static final Coverage COVERAGE = Coverage.of(EDITION, JOBS, Progress.UNWATCHED).orElseThrow();

	@Test
	void everyRuleAndRowHasItsLineWithItsConditions() {
		List<Row> lines = RuleLines.of(COVERAGE);
		assertEquals(EDITION.rules().size(), lines.size());
		assertTrue(lines.stream().anyMatch(l -> l.cell(7).startsWith("tables/")), "rows of tables, too");
		for (int i = 0; i < lines.size(); i++) {
			Row line = lines.get(i);
			assertEquals(EDITION.rules().get(i).name(), line.cell(0));
			assertEquals(COVERAGE.rules().get(i).spoke() == 0, line.cell(1).equals("never spoke"), line.cell(0));
			int of = Integer.parseInt(line.cell(2)) + Integer.parseInt(line.cell(5)) + Integer.parseInt(line.cell(6));
			assertEquals(JOBS.size(), of, "every job spoke, was silent or held open: " + line.cell(0));
			assertEquals(line.lacking(), line.sign() != Icon.AS_EXPECTED);
		}
		assertTrue(lines.stream().anyMatch(Row::lacking) && lines.stream().anyMatch(l -> l.below().stream().anyMatch(b -> b.cell(1).equals("never failed"))));
	}

	@Test
	void everyValueOfASettingIsSeenOrNever() {
		Row valve = SettingLines.of(COVERAGE).stream().filter(l -> l.cell(0).equals("changeover valve")).findFirst().orElseThrow();
		assertEquals(TestBook.setting("changeover valve").domain().listed().size(), valve.below().size());
		assertTrue(valve.below().stream().allMatch(l -> l.lacking() == l.cell(2).equals("0")));
	}

	@Test
	void anUnnoticedMistakeSaysWhoWouldNoticeItOrThatItWasSaved() {
		Strength made = Strength.of(EDITION, JOBS, Progress.UNWATCHED);
		assertTrue(made.survivors().size() > 3 && made.share() > 0);
		List<Row> plain = MistakeLines.of(made, JOBS, Set.of(), Map.of());
		assertEquals(made.tried().size(), plain.stream().mapToInt(l -> l.below().size()).sum());
		assertEquals(made.survivors().size(), plain.stream().flatMap(l -> l.below().stream()).filter(l -> l.cell(2).equals("nobody notices")).count());
		Strength searched = made.withTelltales(EDITION, JOBS, Progress.UNWATCHED);
		Mistake first = searched.survivors().stream().filter(t -> t.telltale().isPresent()).findFirst().orElseThrow().mistake();
		Set<Mistake> all = Set.copyOf(searched.survivors().stream().map(Strength.Tried::mistake).toList());
		List<Row> after = MistakeLines.of(searched, JOBS, all, Map.of(first, "jobs/x.yaml")).stream().flatMap(l -> l.below().stream()).toList();
		assertEquals(1, after.stream().filter(l -> l.cell(2).endsWith("jobs/x.yaml") && !l.lacking()).count());
		assertTrue(after.stream().anyMatch(l -> l.cell(2).startsWith("would be noticed") && l.lacking() && l.sign() == Icon.JOB));
		assertTrue(after.stream().noneMatch(l -> l.cell(2).equals("nobody notices")));
	}
}
