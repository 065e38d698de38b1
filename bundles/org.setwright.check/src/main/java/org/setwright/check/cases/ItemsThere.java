package org.setwright.check.cases;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.book.ExpectedCaution;
import org.setwright.book.ExpectedCheck;
import org.setwright.book.ExpectedFinding;
import org.setwright.book.ExpectedItem;
import org.setwright.book.ItemList;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.check.cases.ItemPoint.There;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Finding;
import org.setwright.engine.outcome.Line;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.UnitSystem;

/** Finds in an outcome what the items of a job case mean. */
public final class ItemsThere {
	private static final int LONGEST = 300;
	private final JobCase job;
	private final Outcome outcome;
	/** Worked out once, and only for checks that some words could mean. */
	private final Map<StartUpCheck, List<String>> lines = new IdentityHashMap<>();

	ItemsThere(JobCase job, Outcome outcome) {
		this.job = job;
		this.outcome = outcome;
	}

	/** @return how {@code wanted}, an item of the job, stands */
	ItemPoint point(ExpectedItem wanted) {
		return new ItemPoint(wanted, switch (wanted.list().topic()) {
			case CAUTIONS -> outcome.cautions().stream().filter(c -> wanted.other() ? expected(ExpectedCaution.class).noneMatch(e -> means(e, c))
					: means((ExpectedCaution) wanted, c)).map(c -> there(c, wanted.at())).toList();
			case START_UP -> outcome.startUp().stream().filter(c -> wanted.other() ? expected(ExpectedCheck.class).noneMatch(e -> means(e, c))
					: means((ExpectedCheck) wanted, c)).map(c -> there(c, wanted.at())).toList();
			case FINDINGS -> outcome.findings().stream().filter(f -> wanted.other() ? expected(ExpectedFinding.class).noneMatch(e -> e.means(f.name()))
					: ((ExpectedFinding) wanted).means(f.name())).map(f -> there(f, wanted.at())).toList();
		});
	}

	/**
	 * @param outcome of any job
	 * @return items that expect what it comes to besides settings, for each topic in several ways, the one to be preferred first
	 */
	public static List<List<ExpectedItem>> all(Outcome outcome) {
		Position nowhere = Position.whole("");
		return List.of(outcome.cautions().stream().map(c -> there(c, nowhere).exactly()).toList(),
				outcome.startUp().stream().map(c -> there(c, nowhere).exactly()).distinct().toList(),
				outcome.startUp().stream().map(c -> worded(c, nowhere)).distinct().toList(),
				outcome.findings().stream().map(f -> there(f, nowhere).exactly()).toList());
	}

	private static ExpectedItem worded(StartUpCheck check, Position at) {
		String words = check.callFor().text(UnitSystem.IP);
		return new ExpectedCheck(list(check), Optional.of(check.phase()), words.substring(0, Math.min(LONGEST, words.length())), false, false, at);
	}

	private static ItemList list(StartUpCheck check) {
		return check.certain() ? ItemList.START_UP : ItemList.PERHAPS_START_UP;
	}

	private <I extends ExpectedItem> Stream<I> expected(Class<I> sort) {
		return job.items().stream().filter(i -> i.list().appears()).filter(sort::isInstance).map(sort::cast);
	}

	private static boolean means(ExpectedCaution expected, Caution caution) {
		return expected.means(caution.kind(), caution.sentence());
	}

	private boolean means(ExpectedCheck expected, StartUpCheck check) {
		return expected.means(check.phase(), () -> lines.computeIfAbsent(check, ItemsThere::lines), check.saidBy().stream().map(Rule::name).toList());
	}

	private static List<String> lines(StartUpCheck check) {
		return Stream.concat(Stream.of(check.callFor(), check.see(), check.ifNot()), check.pause().stream())
				.flatMap((Line line) -> Stream.of(UnitSystem.values()).map(line::text)).distinct().map(ExpectedCheck::plain).toList();
	}

	private static There there(Caution caution, Position at) {
		return new There(new ExpectedCaution(true, Optional.of(caution.kind()), caution.sentence(), at),
				caution.kind().label() + ": " + caution.sentence(), caution.raisedBy());
	}

	private static There there(StartUpCheck check, Position at) {
		return new There(ExpectedCheck.by(list(check), check.saidBy().get(0).name(), at),
				(check.certain() ? "" : "perhaps ") + check.phase().label() + ": " + check.callFor().text(UnitSystem.BOTH), check.firings());
	}

	private static There there(Finding finding, Position at) {
		return new There(new ExpectedFinding(true, finding.name(), false, at), finding.label(), finding.madeBy());
	}
}
