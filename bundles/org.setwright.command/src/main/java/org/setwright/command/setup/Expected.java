package org.setwright.command.setup;

import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.JobCase.Dispute;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobCase.Gap;
import org.setwright.book.JobCase.Settled;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Setting;

/**
 * One expectation of a job case beside what the job came to.
 *
 * @param came what it came to, in the words a job file would use
 * @param met whether that is what was expected
 */
record Expected(Setting setting, Expectation wanted, String came, boolean met) {

	static Expected compare(Setting setting, Expectation wanted, Outcome outcome) {
		Optional<SettingOutcome> came = outcome.setting(setting);
		return new Expected(setting, wanted, came.map(Expected::inWords).orElse("not needed"), met(wanted, came));
	}

	private static boolean met(Expectation wanted, Optional<SettingOutcome> came) {
		if (wanted instanceof Settled settled) {
			return came.flatMap(SettingOutcome::value).filter(settled.value()::same).isPresent();
		} else if (wanted instanceof Gap) {
			return came.filter(c -> c.state() == State.GAP).isPresent();
		} else if (wanted instanceof Dispute) {
			return came.filter(c -> c.state() == State.DISPUTED).isPresent();
		}
		return came.isEmpty();
	}

	private static String inWords(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> outcome.value().orElseThrow().text();
			case DISPUTED -> "dispute: " + outcome.deciding().stream().map(p -> p.value().text()).distinct().collect(Collectors.joining(" or "));
			case GAP -> "gap";
			case PERHAPS -> "perhaps needed, and no rule says";
		};
	}
}
