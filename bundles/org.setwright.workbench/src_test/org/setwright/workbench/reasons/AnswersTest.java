package org.setwright.workbench.reasons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.setwright.engine.Edition;
import org.setwright.engine.Inquiry;
import org.setwright.engine.change.Watch;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.reasons.ReasonNode.InJob;
import org.setwright.workbench.reasons.ReasonNode.InRules;
import org.setwright.workbench.reasons.ReasonNode.Sign;

/** What the tabs say, without a window. */
class AnswersTest {
	private static final Edition EDITION = TestBook.saved().rules().edition().orElseThrow();
	private static final Setting VALVE = TestBook.setting("changeover valve");

	private static Inquiry about(String job) {
		return EDITION.about(TestBook.job(job).job());
	}

	private static Question value(String value) {
		return new Question.OfValue(VALVE, VALVE.domain().read(value).orElseThrow());
	}

	private static Stream<ReasonNode> all(ReasonNode node) {
		return Stream.concat(Stream.of(node), node.children().stream().flatMap(AnswersTest::all));
	}

	@Test
	void aSilentRuleSaysWhatIsInItsWayAndLeadsToTheAnswer() {
		ReasonNode silent = WhyNotTree.of(value("energised in cooling"), about(TestBook.LARCH_LANE)).stream().filter(n -> n.sign() == Sign.NONE)
				.findFirst().orElseThrow();
		assertTrue(silent.text().endsWith(": silent") && silent.place().orElseThrow() instanceof InRules, silent.text());
		assertTrue(all(silent).anyMatch(n -> n.place().filter(InJob.class::isInstance).isPresent()), silent.toString());
		assertTrue(silent.children().get(0).text().contains("; the rule wants that "), silent.children().toString());
	}

	@Test
	void anOutrankedRuleNamesWhoDecided() {
		ReasonNode outranked = WhyNotTree.of(value("energised in cooling"), about(TestBook.LARCH_LANE)).stream()
				.filter(n -> n.sign() == Sign.OUTRANKED).findFirst().orElseThrow();
		assertEquals("on this job it says: energised in cooling", outranked.children().get(0).text());
		assertTrue(outranked.children().get(1).text().startsWith("outranked by table changeover-by-maker, row 1"), outranked.children().toString());
	}

	@Test
	void aRuleThatSpeaksShowsWhy() {
		ReasonNode speaks = WhyNotTree.of(value("energised in heating"), about(TestBook.LARCH_LANE)).stream().filter(n -> n.sign() == Sign.RULE)
				.findFirst().orElseThrow();
		assertFalse(speaks.children().isEmpty());
	}

	@Test
	void changesComeWithTheirSideEffectsAndWithPlacesInTheJob() {
		Question question = value("energised in cooling");
		Inquiry inquiry = about(TestBook.LARCH_LANE);
		ReasonNode root = ChangeTree.of(question.goal(), question.changes(inquiry, Watch.PATIENT), inquiry.outcome().job());
		assertEquals("What has to be different so that changeover valve comes to energised in cooling", root.text());
		assertFalse(root.children().get(0).sign() == Sign.NOTE, root.children().toString());
		assertTrue(root.children().stream().allMatch(c -> all(c).anyMatch(n -> n.place().filter(InJob.class::isInstance).isPresent())));
	}

	@Test
	void aSearchThatWasEndedSaysSo() {
		Question question = value("energised in cooling");
		Inquiry inquiry = about(TestBook.LARCH_LANE);
		ReasonNode root = ChangeTree.of(question.goal(), question.changes(inquiry, changes -> false), inquiry.outcome().job());
		assertTrue(root.children().stream().anyMatch(n -> n.sign() == Sign.NOTE && n.text().contains("ended before")), root.children().toString());
	}

	@Test
	void twoJobsPartAtASettingWithTheRulesOnBothSides() {
		List<ReasonNode> lines = CompareTree.of(about(TestBook.LARCH_LANE), about(TestBook.MILL_ROAD), Optional.of(VALVE));
		assertEquals("changeover valve: energised in heating here, energised in cooling there", lines.get(0).text());
		assertEquals("here table changeover-by-maker, row 1 decides", lines.get(0).children().get(0).text());
		assertTrue(all(lines.get(0)).noneMatch(n -> n.place().filter(InJob.class::isInstance).isPresent()), "which job would it be?");
	}

	@Test
	void aJobIsNotDifferentFromItself() {
		Inquiry same = about(TestBook.LARCH_LANE);
		assertEquals("Both jobs come to the same settings.", CompareTree.of(same, same, Optional.empty()).get(0).text());
	}
}
