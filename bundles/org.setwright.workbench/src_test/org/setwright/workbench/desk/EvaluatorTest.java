package org.setwright.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.book.Problem;
import org.setwright.trade.Trade;

class EvaluatorTest {
	private static final String RULES = "rules/stages.drl";

	@Test
	void theBookHasNoProblemsAndEveryJobRuns() {
		assertEquals(List.of(), TestBook.saved().problems());
		assertEquals(3, TestBook.saved().outcomes().size());
	}

	@Test
	void typingIntoAJobDoesNotCompileTheRulesAgain() throws IOException {
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, text(TestBook.LARCH_LANE).replace("stages: 1", "stages: 2"));
		assertSame(TestBook.saved().rules(), typed.rules());
		assertEquals("2", typed.outcome(TestBook.LARCH_LANE).orElseThrow().setting(TestBook.setting("cooling stages")).orElseThrow()
				.value().orElseThrow().text());
		assertSame(TestBook.outcome(TestBook.MILL_ROAD), typed.outcome(TestBook.MILL_ROAD).orElseThrow(), "untouched jobs are not run again");
	}

	@Test
	void typingIntoRulesCompilesThemAgain() throws IOException {
		Evaluation typed = TestBook.typing(RULES, text(RULES).replace("COOL_STAGES, $s", "COOL_STAGES, 0"));
		assertNotSame(TestBook.saved().rules(), typed.rules());
		assertEquals("0", typed.outcome(TestBook.LARCH_LANE).orElseThrow().setting(TestBook.setting("cooling stages")).orElseThrow()
				.value().orElseThrow().text());
	}

	@Test
	void settingsOfTheShopsOwnCountWhileTheyAreTyped() throws IOException {
		String settings = "settings:\n  - setting: pump exercise\n    meaning: Turns it.\n    values: [off, daily]\n    needed: OutdoorUnit( )\n";
		Evaluation typed = TestBook.typing("settings.yaml", settings);
		assertTrue(typed.runs());
		assertNotSame(TestBook.saved().rules(), typed.rules());
		assertEquals("pump exercise", typed.book().settings().own().get(0).setting().label());
		assertTrue(typed.outcome(TestBook.LARCH_LANE).orElseThrow().settings().stream().anyMatch(s -> s.setting().label().equals("pump exercise")));
		Evaluation faulty = TestBook.typing("settings.yaml", settings.replace("OutdoorUnit", "OutdorUnit"));
		assertFalse(faulty.runs());
		assertEquals(5, faulty.problemsIn("settings.yaml").get(0).at().line());
	}

	@Test
	void aMistakeInTheRulesStopsEveryJobAndSaysWhere() throws IOException {
		Evaluation typed = TestBook.typing(RULES, text(RULES).replace("OutdoorUnit( $s", "OutdorUnit( $s"));
		assertFalse(typed.runs());
		assertTrue(typed.outcomes().isEmpty());
		Problem problem = typed.problemsIn(RULES).get(0);
		assertEquals(8, problem.at().line());
		assertTrue(problem.remedy().contains("OutdoorUnit"), problem.toString());
	}

	@Test
	void aMistakeInAJobStopsThatJobAlone() throws IOException {
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, text(TestBook.LARCH_LANE).replace("stages: 1", "stages: many"));
		assertTrue(typed.runs());
		assertTrue(typed.outcome(TestBook.LARCH_LANE).isEmpty());
		assertTrue(typed.outcome(TestBook.MILL_ROAD).isPresent());
		assertEquals(1, typed.problemsIn(TestBook.LARCH_LANE).size());
		assertEquals(1, typed.errors());
	}

	@Test
	void whatIsDroppedGivesNoAnswer() {
		assertTrue(new Evaluator(Trade.catalogue()).evaluate(TestBook.FOLDER, Drafts.NONE, Optional.empty(), () -> true).isEmpty());
	}

	private static String text(String path) throws IOException {
		return Files.readString(TestBook.FOLDER.resolve(path));
	}

	@Test
	void whoeverWatchesIsToldOfEveryJob() {
		java.util.Set<Integer> told = java.util.concurrent.ConcurrentHashMap.newKeySet();
		Evaluation evaluation = new Evaluator(Trade.catalogue()).evaluate(TestBook.FOLDER, Drafts.NONE, Optional.empty(), new Evaluator.Watch() {
			@Override
			public boolean dropped() {
				return false;
			}

			@Override
			public void ran(int done, int all) {
				assertEquals(3, all);
				told.add(done);
			}
		}).orElseThrow();
		assertEquals(3, evaluation.book().jobs().size());
		assertEquals(java.util.Set.of(1, 2, 3), told);
	}
}
