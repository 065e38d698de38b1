package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/** Every chain of reasons of the starter book ends in what a job says, or in that it says nothing or none. */
class CompleteChainTest {
	private Job job;
	private int leaves;
	private int calculations;
	private int silences;

	@Test
	void noSettingStandsWithoutACompleteChain() {
		Book book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
		Edition edition = Edition.compile(book).edition().orElseThrow();
		for (JobCase jobCase : book.jobs()) {
			Outcome outcome = edition.run(jobCase.job());
			job = outcome.job();
			for (SettingOutcome setting : outcome.settings()) {
				assertEquals(setting.state() == SettingOutcome.State.SETTLED, setting.value().isPresent());
				setting.proposals().forEach(p -> firing(p.firing()));
				setting.heldOpen().forEach(h -> assertFalse(h.by().isEmpty(), h.rule().name()));
				if (setting.proposals().isEmpty()) {
					assertFalse(setting.setting().requiredWhen().isEmpty(), "a gap is asked for by the catalogue: " + setting.setting().label());
				}
			}
		}
		assertTrue(leaves > 3000 && calculations > 100 && silences > 50, leaves + " leaves, " + calculations + " calculations, " + silences);
	}

	private void firing(Firing firing) {
		assertFalse(firing.rule().because().isBlank() || firing.rule().source().isBlank(), firing.rule().name());
		assertEquals(firing.rule().when().isEmpty(), firing.reasons().isEmpty(), "only a rule without conditions needs no reason");
		firing.reasons().forEach(this::reason);
	}

	private void reason(Reason reason) {
		assertTrue(reason.sentence().matches("\\p{Lu}.*\\."), reason.sentence());
		if (reason instanceof Reason.OfFact fact) {
			basis(fact.fact());
			fact.tested().forEach(t -> {
				basis(t.basis());
				assertFalse(t.wanted().isBlank());
			});
		} else if (reason instanceof Reason.OfFinding finding) {
			assertFalse(finding.madeBy().isEmpty(), finding.sentence());
			finding.madeBy().forEach(this::firing);
		} else if (reason instanceof Reason.OfAbsence absence) {
			assertFalse(absence.looked().isEmpty() && absence.findings().isEmpty(), absence.sentence());
			absence.looked().forEach(this::basis);
			absence.findings().forEach(this::asked);
		}
	}

	private void asked(Reason.AskedFinding asked) {
		assertFalse(asked.madeBy().isEmpty() && asked.silent().isEmpty(), asked.finding());
		asked.madeBy().forEach(this::firing);
		for (Reason.SilentMaker maker : asked.silent()) {
			silences++;
			assertFalse(maker.looked().isEmpty(), maker.rule().name());
			maker.looked().forEach(this::basis);
		}
	}

	private void basis(Basis basis) {
		assertEquals(said(basis.place()), basis.place().field().isPresent() ? basis.said() : said(basis.place()));
		assertFalse(basis.said().isBlank());
		assertEquals(basis.place().kind().calculated(), basis.calculation().isPresent(), basis.place().label());
		if (basis.calculation().isEmpty()) {
			leaves++;
			return;
		}
		calculations++;
		Basis.Calculation calculation = basis.calculation().get();
		assertFalse(calculation.formula().isBlank() || calculation.source().isBlank() || calculation.from().isEmpty(), basis.place().label());
		calculation.from().forEach(this::basis);
	}

	/** What the job really says, read apart from the chain. */
	private String said(JobField place) {
		List<Fact> facts = job.entry(place.kind()).facts();
		return place.field().isEmpty() || place.item() >= facts.size() ? "unknown"
				: place.kind().answer(facts.get(place.item()), place.field().get()).value().map(v -> v.text()).orElse("unknown");
	}
}
