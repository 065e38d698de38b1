package org.setwright.workbench.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.cases.Standing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.setup.SettingRow.Mark;

/** Turns an outcome into the lines of the set-up. */
public final class SettingRows {
	private static final String NOTHING = "\u2013"; //$NON-NLS-1$

	/** Settings that stand under one heading. */
	public record Group(String heading, List<SettingRow> rows) {
		public Group {
			rows = List.copyOf(rows);
		}
	}

	private SettingRows() {
	}

	/**
	 * @param catalogue which settings there are
	 * @param saved what the job came to before anything was typed; empty when there is nothing to compare with
	 * @param all whether settings that this job does not need are listed too
	 * @return the groups in catalogue order
	 */
	public static List<Group> of(Catalogue catalogue, Outcome outcome, Optional<Outcome> saved, JobCase job, boolean all) {
		Map<String, List<SettingRow>> groups = new LinkedHashMap<>();
		for (Setting setting : catalogue.settings()) {
			SettingRow row = row(setting, outcome.setting(setting), saved, job);
			if (all || row.outcome().isPresent() || row.was().isPresent() || row.expected().isPresent()) {
				groups.computeIfAbsent(setting.group(), heading -> new ArrayList<>()).add(row);
			}
		}
		return groups.entrySet().stream().map(g -> new Group(g.getKey(), g.getValue())).toList();
	}

	private static SettingRow row(Setting setting, Optional<SettingOutcome> outcome, Optional<Outcome> saved,
			JobCase job) {
		List<Proposal> deciding = outcome.filter(o -> !o.proposals().isEmpty()).map(SettingOutcome::deciding)
				.orElse(List.of());
		return new SettingRow(setting, outcome, outcome.map(SettingRows::value).orElse(NOTHING), mark(outcome),
				state(outcome), distinct(deciding, p -> p.rule().name()), distinct(deciding, p -> p.authority().label()),
				saved.map(o -> inWords(o.setting(setting))).filter(before -> !before.equals(inWords(outcome))),
				Optional.of(CheckedJob.of(job, setting, outcome)).filter(p -> p.standing() == Standing.NOT_MET).map(SettingPoint::expected));
	}

	private static Mark mark(Optional<SettingOutcome> outcome) {
		return outcome.map(SettingRows::mark).orElse(Mark.NOT_NEEDED);
	}

	private static Mark mark(SettingOutcome setting) {
		return switch (setting.state()) {
			case SETTLED -> setting.heldOpen().isEmpty() ? Mark.SETTLED : Mark.SETTLED_SO_FAR;
			case DISPUTED -> Mark.DISPUTED;
			case GAP -> Mark.GAP;
			case PERHAPS -> Mark.PERHAPS;
		};
	}

	/** @return the value of a setting as shown: several with "or" between when disputed, a dash when there is none */
	static String value(SettingOutcome setting) {
		if (setting.state() == State.DISPUTED) {
			return setting.deciding().stream().map(p -> p.value().text()).distinct()
					.collect(Collectors.joining(Messages.SettingRows_or));
		}
		return setting.value().map(v -> v.text()).orElse(NOTHING);
	}

	private static String state(Optional<SettingOutcome> outcome) {
		String word = word(mark(outcome));
		if (outcome.isEmpty() || outcome.get().proposals().isEmpty()) {
			return word;
		}
		SettingOutcome setting = outcome.get();
		if (setting.state() == State.SETTLED && setting.need() == Need.NOT_NEEDED) {
			return NLS.bind(Messages.SettingRows_notNeededYet, word);
		}
		int outranked = setting.outranked().size();
		return outranked == 0 ? word : NLS.bind(Messages.SettingRows_outranks, word, outranked);
	}

	private static String word(Mark mark) {
		return switch (mark) {
			case SETTLED -> Messages.SettingRows_settled;
			case SETTLED_SO_FAR -> Messages.SettingRows_settledSoFar;
			case DISPUTED -> Messages.SettingRows_disputed;
			case GAP -> Messages.SettingRows_gap;
			case PERHAPS -> Messages.SettingRows_perhaps;
			case NOT_NEEDED -> Messages.SettingRows_notNeeded;
		};
	}

	private static String distinct(List<Proposal> proposals, Function<Proposal, String> of) {
		return proposals.stream().map(of).distinct().collect(Collectors.joining(Messages.SettingRows_and));
	}

	private static String inWords(Optional<SettingOutcome> setting) {
		return setting.filter(s -> s.state() == State.SETTLED).map(SettingRows::value)
				.orElseGet(() -> word(mark(setting)));
	}
}
