package org.setwright.bench.keeping;

import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Named;
import org.setwright.bench.words.Span;
import org.setwright.book.ExpectationText;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobEdit;
import org.setwright.book.Misfit;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Setting;

/** Reads lines about keeping what was tried, and about what is expected. */
public final class KeepLines {
	private static final String HOW = "Write \"keep rule in FILE\", \"keep job as NAME\", \"keep job\", "
			+ "\"keep expectation SETTING\" or \"keep expectations\".";
	private final AtHand hand;

	/** @param hand what may be kept */
	public KeepLines(AtHand hand) {
		this.hand = hand;
	}

	/** @param said what follows "keep" @return what to do */
	public Keeping keep(Span said) throws Misread {
		if (said.begins("rule")) {
			return new RuleKeeping(hand).read(said.after("rule"));
		} else if (said.begins("job as")) {
			return new JobKeeping(hand).as(said.after("job as"));
		} else if (said.is("job")) {
			return new JobKeeping(hand).inItsFile(said);
		} else if (said.is("expectations")) {
			return new JobKeeping(hand).expectations(said);
		} else if (said.begins("expectation")) {
			return new JobKeeping(hand).expectation(said.after("expectation"));
		}
		throw said.misread(said.isEmpty() ? "It is not said what to keep." : Misfit.quoted(said.text()) + " cannot be kept.", HOW);
	}

	/** @param said what follows "expect" @return the edit by which the job expects it */
	public JobEdit expect(Span said) throws Misread {
		if (said.begins("nothing of")) {
			return new JobEdit.NotExpected(Named.setting(said.after("nothing of"), hand.ground().catalogue()));
		}
		int colon = said.text().indexOf(':');
		if (colon < 0) {
			Setting setting = Named.setting(said, hand.ground().catalogue());
			return new JobEdit.Expected(setting, JobKeeping.now(setting, hand));
		}
		Setting setting = Named.setting(said.upTo(colon), hand.ground().catalogue());
		Span value = said.from(colon + 1).bare();
		Expectation expectation = ExpectationText.read(setting, value.text(), Position.whole(hand.job().path())).orElse(null);
		if (expectation == null) {
			Misfit misfit = Misfit.of(setting.label(), value.text(), setting.domain());
			throw value.misread(misfit.what(), misfit.remedy().replaceFirst("\\.$", "") + ", or one of: gap, dispute, not needed, not set.");
		}
		return new JobEdit.Expected(setting, expectation);
	}
}
