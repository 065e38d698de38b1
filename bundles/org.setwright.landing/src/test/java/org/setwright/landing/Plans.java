package org.setwright.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.engine.Edition;
import org.setwright.engine.outcome.Outcome;
import org.setwright.landing.plan.End;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.wiring.TerminalMark;

/** Plans of jobs written as a technician writes them, run under the starter book, and said in one line a conductor. */
final class Plans {
	static final Book STARTER = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
	static final Edition EDITION = Edition.compile(STARTER).edition().orElseThrow();

	private Plans() {
	}

	/** @param text a job file without its name */
	static Job job(String text) {
		JobText read = JobReader.read("jobs/test.yaml", "job: Test\n" + text, Trade.catalogue());
		assertEquals(List.of(), read.problems());
		return read.job().job();
	}

	static Outcome outcome(String text) {
		return EDITION.run(job(text));
	}

	static LandingPlan plan(String text) {
		return LandingPlan.of(outcome(text));
	}

	/** Demands that the plan of {@code job} reads {@code expected}, one line a conductor or need. */
	static void assertPlan(String expected, String job) {
		assertEquals(expected.strip(), said(plan(job)));
	}

	/**
	 * For example "red: 24 V supply, wall R, equipment R, keep", with "?" at its end when it is conditional; "cap black";
	 * "none for common"; "indoor fan with yellow"; "stop: ..." with the first words of the stop.
	 */
	static String said(LandingPlan plan) {
		List<String> lines = new ArrayList<>();
		plan.stops().forEach(s -> lines.add("stop: " + Stream.of(s.sentence().split(" ")).limit(4).collect(Collectors.joining(" "))));
		plan.landings().forEach(l -> lines.add(said(l)));
		plan.shared().forEach(s -> lines.add(s.need().label() + " with " + s.conductor().label()));
		plan.unused().forEach(u -> lines.add((u.conductor().fitness() == Conductor.Fitness.FIT ? "cap " : "never ") + u.conductor().label()));
		plan.unserved().forEach(u -> lines.add("none for " + u.label()));
		return String.join("\n", lines);
	}

	static String said(Landing landing) {
		return landing.conductor().label() + ": " + landing.need().label() + ", wall " + said(landing.atWall()) + ", equipment " + said(landing.atEquipment()) + ", "
				+ landing.change().label() + (landing.isSure() ? "" : " ?");
	}

	private static String said(End end) {
		String now = end.from().map(TerminalMark::label).orElse("?");
		return end.to().isEmpty() ? "as it is" : end.stays() ? now : now + ">" + end.to().get().label();
	}
}
