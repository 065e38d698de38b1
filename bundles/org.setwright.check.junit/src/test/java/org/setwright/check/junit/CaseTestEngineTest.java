package org.setwright.check.junit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectDirectory;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectFile;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectUniqueId;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.platform.engine.DiscoverySelector;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.support.descriptor.FilePosition;
import org.junit.platform.engine.support.descriptor.FileSource;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.reporting.legacy.xml.LegacyXmlReportGeneratingListener;
import org.junit.platform.testkit.engine.EngineExecutionResults;
import org.junit.platform.testkit.engine.EngineTestKit;
import org.junit.platform.testkit.engine.Event;
import org.opentest4j.AssertionFailedError;

/** The book of the example is run as any launcher would run it. */
class CaseTestEngineTest {
	private static final String BOOK = "../../releng/example-check/book";
	private static final List<String> ALL = List.of("the book has no errors", "changeover valve", "auxiliary heat stages",
			"caution check at start-up: if the air warms", "no caution stop", "changeover valve", "caution stop: line voltage at the wall");
	@TempDir
	Path folder;

	@Test
	void theBookOfTheExampleComesToWhatItExpects() {
		EngineExecutionResults ran = run(selectDirectory(BOOK));
		ran.testEvents().assertStatistics(s -> s.started(7).succeeded(7).failed(0).skipped(0));
		assertEquals(ALL, names(ran.testEvents().started().stream()));
		assertEquals(List.of("Setwright job cases", "Our practice", "Larch Lane 14, upstairs", "Mill Road 2, baseboards"),
				names(ran.containerEvents().started().stream()));
	}

	@Test
	void theClassStandsForTheBookThatTheParameterNames() {
		assertEquals(ALL, names(EngineTestKit.engine(CaseTestEngine.ID).selectors(selectClass(RuleBookTest.class))
				.configurationParameter(CaseTestEngine.BOOK, BOOK).execute().testEvents().started().stream()));
		assertEquals(0, run(selectClass(String.class)).testEvents().count(), "another class stands for nothing");
	}

	@Test
	void oneJobOrOnePointMayBePickedAndIdsStayTheSame() {
		assertEquals(List.of("the book has no errors", "changeover valve", "caution stop: line voltage at the wall"),
				names(run(selectFile(BOOK + "/jobs/mill-road-2.yaml")).testEvents().started().stream()));
		String book = "[engine:setwright]/[book:" + BOOK.replace("/", "%2F") + "]";
		String point = run(selectDirectory(BOOK)).testEvents().started().stream().filter(e -> name(e).equals("auxiliary heat stages"))
				.map(e -> e.getTestDescriptor().getUniqueId().toString()).findFirst().orElseThrow();
		assertEquals(book + "/[job:jobs%2Flarch-lane-14.yaml]/[point:auxiliary heat stages]", point);
		assertEquals(List.of("the book has no errors", "auxiliary heat stages"), names(run(selectUniqueId(point)).testEvents().started().stream()));
		assertEquals(0, run(selectUniqueId("[engine:junit-jupiter]/[class:A]")).testEvents().count());
	}

	@Test
	void aPointKnowsItsLineAndColumn() {
		Event point = run(selectDirectory(BOOK)).testEvents().started().stream().filter(e -> name(e).equals("auxiliary heat stages")).findFirst().orElseThrow();
		FileSource source = (FileSource) point.getTestDescriptor().getSource().orElseThrow();
		assertTrue(source.getFile().getPath().replace('\\', '/').endsWith("book/jobs/larch-lane-14.yaml"), source.toString());
		assertEquals(FilePosition.from(9, 26), source.getPosition().orElseThrow());
	}

	@Test
	void whatIsNotMetFailsWithBothValuesAndTheReasons() throws IOException {
		copied("jobs/larch-lane-14.yaml", "is: energised in heating", "is: energised in cooling");
		EngineExecutionResults ran = run(selectDirectory(folder.toString()));
		ran.testEvents().assertStatistics(s -> s.started(7).succeeded(6).failed(1));
		AssertionFailedError failure = (AssertionFailedError) ran.testEvents().failed().stream().findFirst().orElseThrow()
				.getRequiredPayload(TestExecutionResult.class).getThrowable().orElseThrow();
		assertEquals("energised in cooling, by table changeover-by-maker", failure.getExpected().getStringRepresentation());
		assertEquals("energised in heating, by table changeover-by-maker, row 1", failure.getActual().getStringRepresentation());
		assertTrue(failure.getMessage().contains("(jobs/larch-lane-14.yaml:8:21)"), failure.getMessage());
		assertTrue(failure.getMessage().contains("source: sheet NV-12"), failure.getMessage());
	}

	@Test
	void startUpChecksAndFindingsAreTestsToo() throws IOException {
		copied("jobs/mill-road-2.yaml", "  cautions:", "  no start-up: any\n  findings: [line voltage]\n  cautions:");
		EngineExecutionResults ran = run(selectDirectory(folder.toString()));
		assertTrue(names(ran.testEvents().succeeded().stream()).contains("no start-up check any"));
		assertEquals(List.of("finding line voltage"), names(ran.testEvents().failed().stream()));
	}

	@Test
	void nothingRunsOnABookWithErrors() throws IOException {
		copied("rules/heat-pump.drl", "propose( CHANGEOVER_VALVE", "propose( CHANGOVER_VALVE");
		EngineExecutionResults ran = run(selectDirectory(folder.toString()));
		ran.testEvents().assertStatistics(s -> s.started(1).failed(1));
		ran.containerEvents().assertStatistics(s -> s.skipped(2));
		String message = ran.testEvents().failed().stream().findFirst().orElseThrow().getRequiredPayload(TestExecutionResult.class).getThrowable()
				.orElseThrow().getMessage();
		assertTrue(message.contains("rules/heat-pump.drl:8:"), message);
	}

	@Test
	void aFolderWithoutABookIsSaidAndNotPassed() {
		EngineTestKit.engine(CaseTestEngine.ID).selectors(selectClass(RuleBookTest.class)).configurationParameter(CaseTestEngine.BOOK, folder + "/none")
				.execute().testEvents().assertStatistics(s -> s.started(1).failed(1));
		assertEquals(0, run(selectDirectory(folder.toString())).testEvents().count(), "a directory that is no book is none of ours");
	}

	/** The schema that our own reports are held to is met by what the platform itself writes. */
	@Test
	void theUsualXmlMeetsTheSchemaOfOurOwnReports() throws Exception {
		LauncherFactory.create().execute(LauncherDiscoveryRequestBuilder.request().selectors(selectDirectory(BOOK)).build(),
				new LegacyXmlReportGeneratingListener(folder, new PrintWriter(new StringWriter())));
		Path xml = folder.resolve("TEST-setwright.xml");
		assertTrue(Files.readString(xml).contains("name=\"no caution stop\""));
		SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(Path.of("../org.setwright.check/src/test/resources/junit-report.xsd").toFile())
				.newValidator().validate(new StreamSource(xml.toFile()));
	}

	private static EngineExecutionResults run(DiscoverySelector selector) {
		return EngineTestKit.engine(CaseTestEngine.ID).selectors(selector).execute();
	}

	private static List<String> names(Stream<Event> events) {
		return events.map(CaseTestEngineTest::name).toList();
	}

	private static String name(Event event) {
		return event.getTestDescriptor().getDisplayName();
	}

	private void copied(String file, String from, String to) throws IOException {
		try (Stream<Path> files = Files.walk(Path.of(BOOK))) {
			for (Path path : files.filter(Files::isRegularFile).toList()) {
				Path copy = folder.resolve(Path.of(BOOK).relativize(path).toString());
				Files.createDirectories(copy.getParent());
				Files.copy(path, copy);
			}
		}
		String text = Files.readString(folder.resolve(file));
		assertTrue(text.contains(from));
		Files.writeString(folder.resolve(file), text.replace(from, to));
	}
}
