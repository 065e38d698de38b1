package org.setwright.workbench.jobs;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.Expectation;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Setting;

/** Compares what a job comes to with what it is expected to come to. */
public final class Expected {
	private Expected() {
	}

	/** @return the settings that do not come to what is expected of them, in file order */
	public static List<Setting> unmet(JobCase job, Outcome outcome) {
		return job.expected().entrySet().stream().filter(e -> !met(e.getValue(), outcome.setting(e.getKey())))
				.map(Map.Entry::getKey).toList();
	}

	/** @return what is expected of {@code setting}, when it comes to something else; empty when all is well */
	public static Optional<String> unmet(JobCase job, Setting setting, Optional<SettingOutcome> outcome) {
		return Optional.ofNullable(job.expected().get(setting)).filter(e -> !met(e, outcome)).map(Expectation::text);
	}

	/** @param outcome empty when the setting is neither needed nor proposed */
	static boolean met(Expectation expectation, Optional<SettingOutcome> outcome) {
		if (expectation instanceof JobCase.Settled settled) {
			return outcome.flatMap(SettingOutcome::value).filter(v -> v.same(settled.value())).isPresent();
		} else if (expectation instanceof JobCase.Gap) {
			return outcome.filter(o -> o.state() == State.GAP).isPresent();
		} else if (expectation instanceof JobCase.Dispute) {
			return outcome.filter(o -> o.state() == State.DISPUTED).isPresent();
		}
		return outcome.isEmpty() || outcome.get().need() == Need.NOT_NEEDED && outcome.get().proposals().isEmpty();
	}
}
