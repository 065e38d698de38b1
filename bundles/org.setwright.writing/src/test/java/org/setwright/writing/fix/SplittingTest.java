package org.setwright.writing.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.writing.Desk;

class SplittingTest {
	private static final String WHEN = "OutdoorUnit( $s : stages )";

	private static Optional<Fix> split(Desk desk) {
		return new Splitting(desk.manuscript()).at(Desk.FILE, desk.text(Desk.FILE).indexOf("when"));
	}

	@Test
	void twoProposalsBecomeTwoRulesWithTheSameConditions() {
		Desk desk = Desk.with(rule("Stages", WHEN, "propose( COOL_STAGES, $s );\n    propose( HEAT_STAGES, 1 );\n    caution( NOTE, \"Look.\" );"));
		desk.apply(split(desk).orElseThrow().edits());
		assertEquals(rule("Stages", WHEN, "propose( COOL_STAGES, $s );\n    caution( NOTE, \"Look.\" );").stripTrailing() + "\n\n"
				+ rule("Stages: heating stages", WHEN, "propose( HEAT_STAGES, 1 );"), desk.text(Desk.FILE));
		assertEquals(List.of(), desk.problems());
	}

	@Test
	void threeProposalsOfTwoSettingsBecomeTwoRules() {
		Desk desk = Desk.with(rule("Stages", WHEN, "propose( COOL_STAGES, $s ); propose( HEAT_STAGES, 1 ); propose( HEAT_STAGES, $s );"));
		Fix fix = split(desk).orElseThrow();
		assertEquals("Split into 2 rules, one for each setting", fix.title());
		assertEquals(List.of(), desk.apply(fix.edits()).problems());
		assertEquals(2, desk.text(Desk.FILE).split("rule \"").length - 1);
	}

	@Test
	void aNameThatIsTakenIsNotGivenAgain() {
		Desk desk = Desk.with(rule("Stages", WHEN, "propose( COOL_STAGES, 1 );\n    propose( HEAT_STAGES, 1 );") + rule("Stages: heating stages", WHEN, "find( X );"));
		assertEquals(List.of(), desk.apply(split(desk).orElseThrow().edits()).problems());
		assertTrue(desk.text(Desk.FILE).contains("rule \"Stages: heating stages 2\""));
	}

	@Test
	void jobsThatNameTheRuleForTheSettingThatMovesAreChangedToo() {
		Desk desk = Desk.with(rule("Stages", WHEN, "propose( COOL_STAGES, 1 );\n    propose( HEAT_STAGES, 1 );"))
				.and("jobs/a.yaml", "job: A # keep\nexpect:\n  heating stages: { is: 1, by: Stages }\n  cooling stages: { is: 1, by: Stages }\n")
				.and("jobs/b.yaml", "job: B\nexpect:\n  heating stages: 1\n");
		Fix fix = split(desk).orElseThrow();
		assertEquals(2, fix.edits().size());
		desk.apply(fix.edits());
		assertEquals("job: A # keep\nexpect:\n  heating stages: { is: 1, by: \"Stages: heating stages\" }\n  cooling stages: { is: 1, by: Stages }\n",
				desk.text("jobs/a.yaml").replace("'", "\""));
	}

	@Test
	void aRuleThatProposesOneThingIsNotSplit() {
		assertEquals(Optional.empty(), split(Desk.with(rule("Stages", WHEN, "propose( COOL_STAGES, 1 ); find( X ); caution( NOTE, \"Look.\" );"))));
	}

	@Test
	void aHalfWrittenRuleIsNotSplit() {
		assertEquals(Optional.empty(), split(Desk.with(rule("Stages", WHEN, "propose( COOL_STAGES, 1 );\n    propose( HEAT_STAGES, 1 );").replace("end", ""))));
	}
}
