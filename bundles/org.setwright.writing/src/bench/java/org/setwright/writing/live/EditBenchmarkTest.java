package org.setwright.writing.live;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.engine.Edition;
import org.setwright.engine.measuring.GrownBook;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/**
 * How long it takes from a change in the text of a rule until it is known what becomes of every rule on every job. Run only when
 * asked for, see DEVELOPERS.md. A change is one of: a comparison turned round, another authority, a value changed, a rule cut off
 * half-way, the file as it was; these follow on each other in one file, then in another picked at random.
 */
class EditBenchmarkTest {
	private static final int JOBS = 200;
	private static final int WARM_UP = 150;
	private static final int MEASURED = 300;
	private static final List<String> TURNED = List.of(" == ", " != ", "YES", "NO", "shop practice", "factory default", " >= ", " < ");
	private final Catalogue catalogue = Trade.catalogue();

	@Test
	void printHowLongAnEditTakes() {
		Book starter = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), catalogue);
		for (int rules : new int[] { 30, 300, 1000 }) {
			measure(GrownBook.of(starter, rules, JOBS), rules);
		}
	}

	private void measure(Book book, int rules) {
		LiveTally live = new LiveTally(catalogue);
		long begun = System.nanoTime();
		live.count(book, () -> false).orElseThrow();
		double first = millis(begun);
		Random random = new Random(rules);
		double[] took = new double[MEASURED];
		int unreadable = 0;
		int at = 0;
		Book now = book;
		for (int i = -WARM_UP; i < MEASURED; i++) {
			at = Math.floorMod(i, 4) == 0 ? random.nextInt(book.ruleFiles().size()) : at;
			Book.RuleFile file = now.ruleFiles().get(at);
			String changed = switch (Math.floorMod(i, 4)) {
				case 0, 1 -> changed(file.text(), random, false);
				case 2 -> changed(file.text(), random, true);
				default -> book.ruleFiles().get(at).text();
			};
			long start = System.nanoTime();
			now = now.withRules(new Book.RuleFile(file.path(), changed));
			Tally tally = live.count(now, () -> false).orElseThrow();
			if (i >= 0) {
				took[i] = millis(start);
				unreadable += tally.stale().isPresent() ? 1 : 0;
			}
		}
		Arrays.sort(took);
		System.out.printf("%4d rules x %d jobs: median %.1f ms, 95th percentile %.1f ms, longest %.1f ms (%d of %d left the book unreadable as a whole); "
				+ "first count %.0f ms; compiled for the rule engine and run on all jobs %.0f ms%n", rules, JOBS, took[MEASURED / 2], took[MEASURED * 95 / 100],
				took[MEASURED - 1], unreadable, MEASURED, first, inFull(book));
	}

	/** What the same would cost without counting only what has changed. */
	private double inFull(Book book) {
		long start = System.nanoTime();
		Edition edition = Edition.compile(book).edition().orElseThrow();
		book.jobs().parallelStream().forEach(job -> edition.run(job.job()));
		return millis(start);
	}

	private static String changed(String text, Random random, boolean cutOff) {
		int word = random.nextInt(TURNED.size());
		int at = text.indexOf(TURNED.get(word), random.nextInt(text.length()));
		if (at < 0) {
			return text + " ";
		}
		int end = at + TURNED.get(word).length();
		return text.substring(0, at) + (cutOff ? "" : TURNED.get(word ^ 1)) + text.substring(end);
	}

	private static double millis(long since) {
		return (System.nanoTime() - since) / 1e6;
	}
}
