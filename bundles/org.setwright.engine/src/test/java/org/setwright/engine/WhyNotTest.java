package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.engine.Books.rule;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.engine.change.Alternative;
import org.setwright.engine.change.Change;
import org.setwright.engine.change.Sensitivity;
import org.setwright.engine.change.Watch;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.whynot.Blocker;
import org.setwright.engine.whynot.Parting;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

class WhyNotTest {
	private static final String SAYS = "propose( COOL_STAGES, 2 );";
	private static final Setting COOL_STAGES = Trade.catalogue().setting("COOL_STAGES").orElseThrow();
	private static final Job ONE_STAGE = Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, stages=1", "Humidifier none",
			"Wire colour=RED, atControl=R", "Wire colour=YELLOW, atControl=Y");

	private static WhyNot whyNot(String when, Job job) {
		Edition edition = Books.edition(rule("asked", "shop practice", when, SAYS));
		return edition.about(job).whyNot(edition.rules().get(0));
	}

	private static List<String> changes(List<Alternative> alternatives, Job job) {
		return alternatives.stream().map(a -> (a.onSite() ? "" : "(given) ")
				+ String.join(" + ", a.changes().stream().map(c -> c.sentence(job)).toList())).toList();
	}

	@Test
	void everyFailingTestIsNamedWithActualAndWanted() {
		WhyNot why = whyNot("OutdoorUnit( kind == AIR_CONDITIONER, stages == 2, maker == UNKNOWN )", ONE_STAGE);
		assertEquals(WhyNot.Status.SILENT, why.status());
		assertEquals("The outdoor unit is an air-source heat pump and has 1 stage; "
				+ "the rule wants that it is an air conditioner and has 2 stages.", why.blockers().get(0).sentence());
		assertEquals(2, why.blockers().get(0).tested().size());
	}

	@Test
	void theFactThatComesNearestIsNamed() {
		WhyNot why = whyNot("Wire( colour == YELLOW, atControl == R )", Jobs.of("Wire colour=RED, atControl=Y", "Wire colour=YELLOW, atControl=Y"));
		assertEquals("wire 2: at control", why.blockers().get(0).tested().get(0).field().label());
	}

	@Test
	void aJoinFailsOnlyWhereItFails() {
		WhyNot why = whyNot("Wire( colour == RED, length == UNKNOWN, $c : atControl ) Wire( colour == YELLOW, gauge != UNKNOWN, atControl == $c )",
				Jobs.of("Wire colour=RED, atControl=R", "Wire colour=YELLOW, atControl=Y, gauge=18 AWG, length=30 ft"));
		assertEquals(1, why.blockers().size());
		assertEquals(List.of("wire 2: at control"), why.blockers().get(0).tested().stream().map(t -> t.field().label()).toList());
	}

	@Test
	void whatStandsInTheWayOfNotIsNamed() {
		WhyNot why = whyNot("not Wire( colour == YELLOW )", ONE_STAGE);
		assertEquals("The rule wants that there is no wire that is yellow; in the way: wire 2.", why.blockers().get(0).sentence());
	}

	@Test
	void anAbsentFactIsSaidToBeAbsentAndAnUnsaidOneUnsaid() {
		assertTrue(whyNot("exists Humidifier( )", ONE_STAGE).blockers().get(0).sentence().startsWith("There is no humidifier"));
		WhyNot unsaid = whyNot("Ventilator( )", ONE_STAGE);
		assertEquals(WhyNot.Status.HELD_OPEN, unsaid.status());
		assertTrue(unsaid.blockers().get(0).sentence().startsWith("Nobody has said whether there is a ventilator"));
	}

	@Test
	void ofAlternativesTheNearestCounts() {
		WhyNot why = whyNot("( OutdoorUnit( kind == AIR_CONDITIONER, stages == 2 ) or Wire( colour == WHITE ) )", ONE_STAGE);
		assertEquals(1, why.blockers().size());
		assertEquals("Wire 1 is red; the rule wants that it is white.", why.blockers().get(0).sentence());
	}

	@Test
	void aMissingFindingLeadsToTheRulesThatCouldMakeIt() {
		Edition edition = Books.edition(rule("maker", "shop practice", "OutdoorUnit( stages == 2 )", "find( TWO_STAGE );")
				+ rule("asked", "shop practice", "Finding( name == TWO_STAGE )", SAYS));
		Blocker blocker = edition.about(ONE_STAGE).whyNot(edition.rules().get(1)).blockers().get(0);
		assertEquals("maker", blocker.makers().get(0).rule().name());
		assertEquals("Not found: two stage.", blocker.sentence());
		Reason.Tested tested = blocker.makers().get(0).blockers().get(0).tested().get(0);
		assertEquals("is 2", tested.wanted());
	}

	@Test
	void anOutrankedRuleNamesWhatDecided() {
		Edition edition = Books.edition(rule("weak", "shop practice", "OutdoorUnit( )", SAYS)
				+ rule("strong", "code or safety", "OutdoorUnit( )", "propose( COOL_STAGES, 1 );"));
		WhyNot weak = edition.about(ONE_STAGE).whyNot(edition.rules().get(0));
		assertEquals(WhyNot.Status.OUTRANKED, weak.status());
		assertEquals("strong", weak.outrankedBy().get(0).rule().name());
	}

	@Test
	void theSmallestChangeComesFirstAndOneThatIsGivenIsMarked() {
		Edition edition = Books.edition(rule("asked", "shop practice", "OutdoorUnit( stages == 2 ) Wire( colour == RED, atEquipment == R )", SAYS));
		assertEquals(List.of("(given) outdoor unit: stages is 2 instead of 1 + wire 1: at equipment is R"),
				changes(edition.about(ONE_STAGE).toFire(edition.rules().get(0), Watch.PATIENT).found(), ONE_STAGE).subList(0, 1));
	}

	@Test
	void anUnsaidFactMayTurnOut() {
		Edition edition = Books.edition(rule("asked", "shop practice", "Ventilator( airflow > \"100 cfm\" )", SAYS));
		List<Alternative> found = edition.about(ONE_STAGE).toFire(edition.rules().get(0), Watch.PATIENT).found();
		assertTrue(found.get(0).onSite());
		assertEquals(2, found.get(0).changes().size());
		assertTrue(found.get(0).changes().get(0) instanceof Change.Added);
	}

	@Test
	void aSettingCanBeAskedToTakeAValue() {
		Edition edition = Books.edition(rule("two", "shop practice", "OutdoorUnit( stages == 2 )", SAYS)
				+ rule("one", "maker's instructions", "Wire( colour == YELLOW )", "propose( COOL_STAGES, 1 );"));
		List<Alternative> found = edition.about(ONE_STAGE).toSettle(COOL_STAGES, new Value.Count(2), Watch.PATIENT).found();
		assertEquals(2, found.get(0).changes().size(), "the stronger rule has to be silenced too");
		assertEquals("2", edition.run(found.get(0).changed()).setting(COOL_STAGES).orElseThrow().value().orElseThrow().text());
	}

	@Test
	void whatMattersMostComesFirst() {
		Edition edition = Books.edition(rule("a", "shop practice", "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )",
				"propose( COOL_STAGES, 1 ); propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );")
				+ rule("b", "shop practice", "Wire( colour == RED )", "propose( DAYLIGHT_SAVING, YES );"));
		List<Sensitivity> matters = edition.about(ONE_STAGE).whatMatters(() -> false);
		assertEquals("outdoor unit: kind", matters.get(0).place().label());
		assertTrue(matters.stream().anyMatch(m -> m.place().label().equals("wire 1: colour")));
		assertTrue(matters.stream().noneMatch(m -> m.place().label().equals("outdoor unit: stages")), "no rule looks at it");
	}

	@Test
	void twoJobsPartAtTheRuleThatDecidesOnlyOneOfThem() {
		Edition edition = Books.edition(rule("two", "shop practice", "OutdoorUnit( stages == 2 )", SAYS)
				+ rule("one", "shop practice", "OutdoorUnit( stages == 1 )", "propose( COOL_STAGES, 1 );"));
		Parting parting = edition.about(ONE_STAGE).comparedWith(edition.about(Jobs.of("OutdoorUnit stages=2")), COOL_STAGES);
		assertEquals("one", parting.decidesHere().get(0).firing().rule().name());
		assertEquals("The outdoor unit has 2 stages; the rule wants that it has 1 stage.",
				parting.decidesHere().get(0).onOther().blockers().get(0).sentence());
		assertEquals("two", parting.decidesThere().get(0).firing().rule().name());
	}
}
