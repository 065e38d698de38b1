package org.setwright.check.report;

import java.math.BigDecimal;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.RunTimes;
import org.setwright.check.cases.Standing;

/**
 * A case check in the XML by which build servers take test results: a suite for each job, a case for each point that is
 * asked. A point that is not met is a failure; a job that could not run is an error. A job is run once for all of its points, so
 * the time it took is shared out evenly among its cases, to the microsecond.
 */
public final class JunitXml {
	private static final long NANOS_IN_A_MICRO = 1000;

	private JunitXml() {
	}

	/** @param book what the shop calls the book @param times of the jobs that were measured @return the text of the file */
	public static String of(String book, CaseCheck check, RunTimes times) {
		Markup xml = new Markup();
		xml.open("testsuites", "name", book, "tests", number(check.jobs().stream().mapToLong(JunitXml::tests).sum()),
				"failures", number(check.count(Standing.NOT_MET)), "errors", number(check.jobs().stream().filter(j -> j.outcome().isEmpty()).count()),
				"time", seconds(check.jobs().stream().mapToLong(j -> micros(j, times) * tests(j)).sum())).line();
		check.jobs().forEach(job -> suite(xml, book, job, micros(job, times)));
		return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + xml.close().line();
	}

	/** @return for each test of {@code job}, so that the tests add up to what its suite says */
	private static long micros(CheckedJob job, RunTimes times) {
		return tests(job) == 0 ? 0 : times.of(job.job()).map(t -> t.toNanos() / NANOS_IN_A_MICRO / tests(job)).orElse(0L);
	}

	private static String seconds(long micros) {
		return BigDecimal.valueOf(micros, 6).toPlainString();
	}

	private static long tests(CheckedJob job) {
		return job.outcome().isPresent() ? job.asked().size() : 1;
	}

	private static void suite(Markup xml, String book, CheckedJob job, long micros) {
		boolean ran = job.outcome().isPresent();
		xml.open("testsuite", "name", job.job().name(), "tests", number(tests(job)), "failures", number(job.count(Standing.NOT_MET)),
				"errors", ran ? "0" : "1", "skipped", "0", "time", seconds(micros * tests(job))).line();
		xml.open("properties").empty("property", "name", "file", "value", job.job().path())
				.empty("property", "name", "not asked", "value", number(job.count(Standing.NOT_ASKED))).close().line();
		if (!ran) {
			xml.open("testcase", "name", "runs", "classname", group(book, job.job()), "time", seconds(micros))
					.element("error", job.job().path() + "\n", "message", job.fault(), "type", "not run").close().line();
		}
		job.asked().forEach(point -> test(xml, book, job, point, micros));
		xml.close().line();
	}

	private static void test(Markup xml, String book, CheckedJob job, Point point, long micros) {
		xml.open("testcase", "name", point.what(), "classname", group(book, job.job()), "time", seconds(micros));
		if (!point.met()) {
			xml.element("failure", point.at() + "\n" + Telling.text(point, job.job()), "message", point.sentence(), "type", "not met");
		}
		xml.close().line();
	}

	/** @return a name for the tests of {@code job}; build servers take what stands before its one full stop for a group */
	public static String group(String book, JobCase job) {
		return book.replaceAll("[./\\\\]", " ").strip() + "." + job.path().replaceFirst("^jobs/", "").replaceFirst("\\.yaml$", "").replace('.', '-');
	}

	private static String number(long number) {
		return Long.toString(number);
	}
}
