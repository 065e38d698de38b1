package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.change.Alternative;
import org.setwright.engine.language.Rule;
import org.setwright.engine.whynot.Blocker;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.engine.whynot.WhyNot.Status;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;

/** Every why-not answer on the starter book, checked by a second way that knows nothing of the first. */
class StarterWhyNotTest {
	private static Book book;
	private static Edition edition;

	@BeforeAll
	static void compile() {
		book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
		edition = Edition.compile(book).edition().orElseThrow();
	}

	@Test
	void everyRuleOnEveryJobHasATrueStatusAndEverySilenceItsReasons() {
		for (JobCase job : book.jobs()) {
			Inquiry inquiry = edition.about(job.job());
			for (WhyNot why : inquiry.ofEveryRule()) {
				boolean fired = inquiry.outcome().firings().stream().anyMatch(f -> f.rule() == why.rule());
				boolean open = inquiry.outcome().heldOpen().stream().anyMatch(h -> h.rule() == why.rule());
				String where = why.rule().name() + " on " + job.name();
				assertEquals(fired, why.status() == Status.FIRED || why.status() == Status.OUTRANKED, where);
				assertEquals(open, why.status() == Status.HELD_OPEN, where);
				assertEquals(fired, why.blockers().isEmpty(), where);
				assertEquals(open, !why.heldBy().isEmpty(), where);
			}
		}
	}

	/** For every different answer mends exactly what is reported; then the rule must speak. Two more rounds are allowed where mending one thing undoes another. */
	@Test
	void aSilentRuleSpeaksOnceWhatIsReportedIsMended() {
		int mended = 0;
		int beyond = 0;
		List<String> wrong = new ArrayList<>();
		Set<String> answers = new HashSet<>();
		for (JobCase job : book.jobs()) {
			Inquiry inquiry = edition.about(job.job());
			for (Rule rule : edition.rules()) {
				WhyNot why = inquiry.whyNot(rule);
				if (why.blockers().isEmpty() || !answers.add(rule.name() + why.blockers().stream().map(Blocker::sentence).toList())) {
					continue;
				}
				Optional<Boolean> speaks = speaksWhenMended(rule, job.job(), why.blockers(), 3);
				mended += speaks.isPresent() ? 1 : 0;
				beyond += speaks.isPresent() ? 0 : 1;
				if (speaks.isPresent() && !speaks.get()) {
					wrong.add(rule.name() + " on " + job.name() + ": " + why.blockers().stream().map(Blocker::sentence).toList());
				}
			}
		}
		assertEquals("", String.join("\n", wrong));
		assertTrue(mended > 300 && mended > 2 * beyond, mended + " mended, " + beyond + " beyond simple means");
	}

	private static Optional<Boolean> speaksWhenMended(Rule rule, Job job, List<Blocker> blockers, int rounds) {
		Optional<Job> mended = Mending.mend(job, blockers);
		if (mended.isEmpty()) {
			return Optional.empty();
		}
		WhyNot after = edition.about(mended.get()).whyNot(rule);
		return after.blockers().isEmpty() ? Optional.of(true)
				: rounds == 1 ? Optional.of(false) : speaksWhenMended(rule, mended.get(), after.blockers(), rounds - 1);
	}

	@Test
	void everyChangeProposedForASilentRuleWorksAndEachPartOfItIsNeeded() {
		Random random = new Random(11);
		int checked = 0;
		for (JobCase job : book.jobs()) {
			Inquiry inquiry = edition.about(job.job());
			List<WhyNot> silent = inquiry.ofEveryRule().stream().filter(w -> !w.blockers().isEmpty()).toList();
			WhyNot why = silent.get(random.nextInt(silent.size()));
			long until = System.nanoTime() + 300_000_000L;
			for (Alternative found : inquiry.toFire(why.rule(), changes -> System.nanoTime() < until).found()) {
				assertTrue(speaks(why.rule(), found.changed()), why.rule().name() + " on " + job.name());
				for (int left = 0; left < found.changes().size(); left++) {
					Job less = job.job();
					for (int i = 0; i < found.changes().size(); i++) {
						boolean applies = i != left && (i < left || !found.changes().get(i).place().kind().equals(found.changes().get(left).place().kind()));
						less = applies ? found.changes().get(i).apply(less) : less;
					}
					assertFalse(speaks(why.rule(), less), "a smaller change would do: " + found.changes());
				}
				checked++;
			}
		}
		assertTrue(checked > 40, checked + " changes checked");
	}

	private static boolean speaks(Rule rule, Job job) {
		return edition.run(job).firings().stream().anyMatch(f -> f.rule() == rule);
	}
}
