package org.setwright.check.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDateTime;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.check.Sample;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.RunTimes;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class ReportsTest {
	private static final LocalDateTime WHEN = LocalDateTime.of(2026, 11, 25, 9, 5);
	/** A name that would break out of either report, a point of every standing, and something accepted. */
	private static final CaseCheck CHECK = CaseCheck.of(Sample.edition(), Sample.book("""
			job: '<script>alert("x")</script> & ]]> co'
			pump: { size: 3 }
			lamp: { lit: yes, bright: yes }
			expect:
			  speed: { is: 4, by: Another }
			  alarm: 62 °F
			  cautions: [stop, note]
			accepted:
			  - { what: alarm, was: 60 °F, now: 62 °F, date: 2026-11-25, by: Dana Reyes, because: it is }
			""", "job: Nothing asked\npump: { size: 1 }\n").jobs(), Progress.UNWATCHED, false).orElseThrow();

	@Test
	void theXmlForBuildServersIsValidAndCountsRight() throws Exception {
		String xml = JunitXml.of("Our practice. v2", CHECK, new RunTimes());
		validate(xml);
		Document document = parse(xml);
		assertEquals("4 2 0", xpath(document, "concat(/testsuites/@tests, ' ', /testsuites/@failures, ' ', /testsuites/@errors)"));
		assertEquals("4", xpath(document, "count(//testcase)"));
		assertEquals("2", xpath(document, "count(//failure)"));
		assertEquals("expected 4, by Another, came to 3, by By size", xpath(document, "//testcase[@name='speed']/failure/@message"));
		assertEquals("Our practice  v2.0", xpath(document, "//testcase[1]/@classname"));
		assertTrue(xpath(document, "//testcase[@name='speed']/failure").contains("decided by \"By size\" (shop practice)"));
		assertEquals("2", xpath(document, "//property[@name='not asked'][1]/@value"), "sign and colour");
	}

	@Test
	void theTimeOfAJobIsSharedOutAmongItsTests() throws Exception {
		RunTimes times = new RunTimes();
		CaseCheck check = CaseCheck.of(Sample.edition(), CHECK.jobs().stream().map(CheckedJob::job).toList(), Progress.UNWATCHED, true, times).orElseThrow();
		String xml = JunitXml.of("B", check, times);
		validate(xml);
		Document document = parse(xml);
		assertEquals("0", xpath(document, "count(//testcase[not(number(@time) >= 0)])"), "every test has its time");
		for (String sum : List.of("concat(sum(/testsuites/testsuite/@time) - /testsuites/@time, '')", "concat(sum(//testsuite[1]/testcase/@time) - //testsuite[1]/@time, '')")) {
			assertEquals(0, Double.parseDouble(xpath(document, sum)), 1e-9, sum);
		}
		double said = Double.parseDouble(xpath(document, "concat(//testsuite[1]/@time, '')"));
		double took = times.of(check.jobs().get(0).job()).orElseThrow().toNanos() / 1e9;
		assertTrue(said > 0 && said <= took && said > took - 1e-5, said + " of " + took);
		assertEquals("0.000000", xpath(document, "//testsuite[2]/@time"), "nothing is asked there");
	}

	@Test
	void aJobThatCouldNotRunIsAnError() throws Exception {
		JobCase job = Sample.book("job: A\nexpect: { speed: 1 }\n").jobs().get(0);
		String xml = JunitXml.of("B", new CaseCheck(List.of(CheckedJob.notRun(job, "They differ."))), new RunTimes());
		validate(xml);
		assertEquals("They differ.", xpath(parse(xml), "//testcase[@name='runs']/error/@message"));
		assertEquals("1 0 1", xpath(parse(xml), "concat(/testsuites/@tests, ' ', /testsuites/@failures, ' ', /testsuites/@errors)"));
	}

	@Test
	void theSchemaRefusesWhatBuildServersDo() {
		for (String broken : List.of("<testsuites tests='1' failures='0'/>", "<testsuites tests='1' failures='0' errors='0'><testcase name='a' classname='b'/></testsuites>",
				"<testsuite name='' tests='0' failures='0' errors='0'/>",
				"<testsuite name='a' tests='1' failures='0' errors='0'><testcase name='a' classname='b' time='soon'/></testsuite>", "<testsuite name='a' tests='1' failures='0' errors='0'><testcase name='a'/></testsuite>")) {
			assertThrows(SAXException.class, () -> validate(broken), broken);
		}
	}

	@Test
	void thePageIsOneFileThatNeedsNothingElse() throws Exception {
		String html = HtmlReport.of("Our <practice>", WHEN, List.of(new CasesSection(CHECK)));
		assertFalse(html.matches("(?s).*(https?:|//[a-z]|<script|<link|<img|@import|url\\((?!#)).*"), html);
		Document document = parse(html.replace("<!DOCTYPE html>", ""));
		assertEquals("Our <practice>", xpath(document, "//h1"));
		assertTrue(xpath(document, "//header").contains("25 November 2026, 09:05"));
		assertEquals("2 jobs, 2 met, \u26a0 2 not met, 5 not asked", xpath(document, "//ul[@class='figures']").strip().replaceAll("\\s*\\n\\s*", ", ")
				.replaceAll("(\\d)([a-z])", "$1 $2"));
		assertEquals("2", xpath(document, "count(//details)"));
		assertEquals("speed", xpath(document, "//article/h5[1]"));
		assertEquals("3, by By size", xpath(document, "//article/dl[1]/dd[2]"));
		assertTrue(xpath(document, "//section").contains("Dana Reyes"));
		assertEquals("3", xpath(document, "count(//*[local-name()='svg'][@role='img']/*[local-name()='g'])"), "pump, lamp and cautions");
	}

	@Test
	void sectionsOfOthersFollowWithTheirFigures() throws Exception {
		Section other = new Section() {
			@Override
			public String title() {
				return "What is reached";
			}

			@Override
			public List<Figure> figures() {
				return List.of(new Figure("87%", "of rules", true));
			}

			@Override
			public void write(Markup html) {
				html.element("p", "12 < 13");
			}
		};
		Document document = parse(HtmlReport.of("B", WHEN, List.of(new CasesSection(CHECK), other)).replace("<!DOCTYPE html>", ""));
		assertEquals("12 < 13", xpath(document, "//section[@id='what-is-reached']/p"));
		assertEquals("#what-is-reached", xpath(document, "//nav//li[2]/a/@href"));
		assertTrue(xpath(document, "//ul[@class='figures']/li[last()]").contains("87%"));
	}

	@Test
	void everyRuleIsReadAloudUnderItsFile() throws Exception {
		Document document = parse(HtmlReport.of("B", WHEN, List.of(new RulesSection(Sample.edition().rules()))).replace("<!DOCTYPE html>", ""));
		assertEquals(Integer.toString(Sample.edition().rules().size()), xpath(document, "count(//section[@id='rules-read-aloud']//h5)"));
		String read = xpath(document, "//h5[.='By size']/following-sibling::p[1]");
		assertTrue(read.startsWith("If the pump") && read.endsWith("Source: common practice."), read);
	}

	@Test
	void whatXmlHasNoPlaceForIsShownAsSuch() throws Exception {
		assertEquals("<a b=\"\uFFFD&lt;\">\uFFFD &amp; \uFFFD</a>", new Markup().element("a", "\u0007 & \uD800", "b", "\u0000<").toString());
	}

	private static void validate(String xml) throws Exception {
		SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(ReportsTest.class.getResource("/junit-report.xsd")).newValidator()
				.validate(new StreamSource(new StringReader(xml)));
	}

	private static Document parse(String xml) throws Exception {
		return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
	}

	private static String xpath(Document document, String path) throws Exception {
		return XPathFactory.newInstance().newXPath().evaluate(path, document);
	}
}
