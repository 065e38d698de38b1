package org.setwright.check.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.engine.Edition;
import org.setwright.engine.change.Telltale;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.Trade;

/** Deliberate mistakes are noticed by the jobs that should notice them, and by no others. */
class StrengthTest {
	private static final String RULES = """
			rule "Two stages"
			    @authority( shop practice )
			    @because( "It has two." )
			    @source( common practice )
			when
			    IndoorUnit( stages >= 2 )
			then
			    propose( HEAT_STAGES, 2 );
			end

			rule "One stage"
			    @authority( shop practice )
			    @because( "It has one." )
			    @source( common practice )
			when
			    IndoorUnit( stages < 2 )
			then
			    propose( HEAT_STAGES, 1 );
			end
			""";
	private static final String SAYS_AND_FINDS = """
			rule "Prove it"
			    @authority( shop practice )
			    @because( "So it is." )
			    @source( common practice )
			when
			    IndoorUnit( stages >= 2 )
			then
			    %s
			end
			""";
	private static final String TWO = "job: two\nindoor unit: { kind: furnace, stages: 2 }\nexpect:\n  heating stages: 2\n";
	private static final String ONE = "job: one\nindoor unit: { kind: furnace, stages: 1 }\nexpect:\n  heating stages: 1\n";

	/** Of the starter's jobs, so many that the test stays short. */
	private static final int EVERY = 3;

	@TempDir
	Path folder;
	private Book book;
	private Edition edition;
	private String rules = RULES;

	@Test
	void aJobOnTheBoundaryNoticesThatTheBoundaryMoved() throws IOException {
		Strength strength = strength(TWO, ONE);
		assertEquals(List.of(), survivors(strength, "Two stages"));
		assertTrue(strength.tried().stream().filter(t -> t.mistake().kind() == Mistake.Kind.BOUNDARY_MOVED).count() >= 4);
	}

	@Test
	void withoutThatJobTheMistakeSurvivesAndAJobIsFoundThatWouldNotice() throws IOException {
		Strength strength = strength(ONE.replace("expect:", "notes: x\nexpect:"));
		List<String> survivors = survivors(strength, "Two stages");
		assertTrue(survivors.contains("stages is at least 2, taken for: is at least 3"), survivors.toString());
		assertTrue(strength.share() < 1);
		Strength searched = strength.withTelltales(edition, book.jobs(), Progress.UNWATCHED);
		Strength.Tried moved = searched.survivors().stream().filter(t -> t.mistake().sentence().endsWith("is at least 3")).findFirst().orElseThrow();
		Telltale telltale = moved.telltale().orElseThrow();
		Outcome mistaken = edition.under(Strength.amendment(edition, moved.mistake())).run(telltale.job());
		assertEquals(telltale.after(), mistaken);
		assertFalse(telltale.settings().isEmpty());
	}

	@ParameterizedTest(name = "{1}")
	@CsvSource(delimiter = '|', textBlock = """
			startUp( HEATING, "Call for heat.", "It heats.", "It is broken." ); | start-up check by: Prove it
			find( MORE_THAN_ONE );                                              | finding more than one
			""")
	void aStartUpCheckOrAFindingThatNoJobAsksForIsAskedForByTheJobFound(String says, String item) throws Exception {
		rules = SAYS_AND_FINDS.formatted(says);
		Strength strength = strength(ONE.replace("heating stages: 1", "heating stages: gap"));
		assertTrue(strength.share() < 1);
		Strength searched = strength.withTelltales(edition, book.jobs(), Progress.UNWATCHED);
		Catching found = Catching.of(searched, book.jobs()).stream().filter(c -> c.mistake().instead().isEmpty()).findFirst().orElseThrow();
		assertTrue(found.sentence().endsWith(", if it expects the " + item + "."), found.sentence());
		Strength stronger = strength(ONE.replace("heating stages: 1", "heating stages: gap"), found.text(Trade.catalogue()));
		assertEquals(List.of(), stronger.left());
		assertEquals(List.of(), stronger.survivors().stream().filter(t -> t.mistake().instead().isEmpty()).toList());
	}

	@Test
	void aJobThatFailsAnywayNoticesNothing() throws IOException {
		Strength strength = strength(TWO.replace("stages: 2\n", "stages: 1\n"));
		assertEquals(List.of("two"), strength.left().stream().map(JobCase::name).toList());
		assertEquals(0, strength.share());
	}

	@Test
	void aMistakeOfEverySortIsThoughtOfAndEachIsAnotherRule() {
		Edition starter = starter();
		List<Mistake> mistakes = Mistakes.in(starter.rules());
		assertEquals(java.util.Set.of(Mistake.Kind.values()), mistakes.stream().map(Mistake::kind).collect(Collectors.toSet()));
		mistakes.forEach(m -> assertFalse(m.instead().filter(m.rule()::equals).isPresent(), m.sentence()));
		assertEquals(mistakes.stream().filter(m -> m.instead().isPresent()).count(),
				mistakes.stream().flatMap(m -> m.instead().stream()).distinct().count());
	}

	@Test
	void whatTheEvaluatorSaysOfAMistakeTheRuleEngineSaysToo() {
		Edition starter = starter();
		List<JobCase> all = BookReader.read(Path.of("../../rules/starter"), Trade.catalogue()).jobs();
		List<JobCase> jobs = IntStream.range(0, all.size()).filter(i -> i % EVERY == 0).mapToObj(all::get).toList();
		List<Mistake> mistakes = Mistakes.in(starter.rules());
		int differed = 0;
		for (int i = 7; i < mistakes.size(); i += mistakes.size() / 6) {
			var amendment = Strength.amendment(starter, mistakes.get(i));
			Edition mistaken = starter.under(amendment);
			for (JobCase job : jobs) {
				Outcome rehearsed = starter.rehearse(job.job()).under(amendment).outcome();
				assertEquals(mistaken.run(job.job()), rehearsed, mistakes.get(i).sentence() + " on " + job.name());
				differed += rehearsed.equals(starter.run(job.job())) ? 0 : 1;
			}
		}
		assertTrue(differed > 10, differed + " outcomes differ");
	}

	private static Edition starter() {
		return Edition.compile(BookReader.read(Path.of("../../rules/starter"), Trade.catalogue())).edition().orElseThrow();
	}

	private static List<String> survivors(Strength strength, String rule) {
		return strength.survivors().stream().map(Strength.Tried::mistake).filter(m -> m.rule().name().equals(rule))
				.filter(m -> m.kind() == Mistake.Kind.BOUNDARY_MOVED || m.kind() == Mistake.Kind.COMPARISON_FLIPPED).map(Mistake::sentence).toList();
	}

	private Strength strength(String... jobs) throws IOException {
		Files.createDirectories(folder.resolve("rules"));
		Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(folder.resolve("book.yaml"), "book: Test\n");
		Files.writeString(folder.resolve("rules/test.drl"), rules);
		for (int i = 0; i < jobs.length; i++) {
			Files.writeString(folder.resolve("jobs/" + i + ".yaml"), jobs[i]);
		}
		book = BookReader.read(folder, Trade.catalogue());
		edition = Edition.compile(book).edition().orElseThrow(() -> new AssertionError(Edition.compile(book).problems()));
		return Strength.of(edition, book.jobs(), Progress.UNWATCHED);
	}
}
