package org.setwright.bench.keeping;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Named;
import org.setwright.bench.words.Span;
import org.setwright.book.ExpectationText;
import org.setwright.book.ExpectedItem;
import org.setwright.book.ItemList;
import org.setwright.book.ItemText;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobEdit;
import org.setwright.book.Misfit;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Setting;

/** Reads lines about keeping what was tried, and about what is expected. */
public final class KeepLines {
	private static final String HOW = "Write \"keep rule in FILE\", \"keep job as NAME\", \"keep job\", "
			+ "\"keep expectation SETTING\" or \"keep expectations\".";
	private static final int MOST = 500;
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
		Span nothing = said.begins("nothing of") ? said.after("nothing of") : null;
		Optional<ItemList> list = list(nothing == null ? said : nothing);
		if (list.isPresent()) {
			ExpectedItem item = item(list.get(), nothing == null ? said : nothing);
			return nothing == null ? new JobEdit.ItemExpected(item) : new JobEdit.ItemNotExpected(item);
		} else if (nothing != null) {
			return new JobEdit.NotExpected(Named.setting(nothing, hand.ground().catalogue()));
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

	/** @return the list whose items are called what {@code said} begins with: "no caution", "finding" */
	private static Optional<ItemList> list(Span said) {
		return Arrays.stream(ItemList.values()).filter(l -> said.begins(l.one() + " ")).max(Comparator.comparingInt(l -> l.one().length()));
	}

	private ExpectedItem item(ItemList list, Span said) throws Misread {
		Span words = said.after(list.one());
		Optional<ExpectedItem> item = words.text().length() > MOST ? Optional.empty()
				: ItemText.read(list, words.text(), Position.whole(hand.job().path()));
		if (item.isEmpty()) {
			int colon = words.text().indexOf(':');
			Span head = colon < 0 ? words : words.upTo(colon);
			Misfit misfit = ItemText.misfit(list, head.text());
			throw head.misread(misfit.what(), misfit.remedy());
		}
		return item.get();
	}
}
