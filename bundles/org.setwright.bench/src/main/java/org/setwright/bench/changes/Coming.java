package org.setwright.bench.changes;

import java.util.stream.Collectors;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Named;
import org.setwright.engine.outcome.SettingOutcome;

/** What a setting comes to, in words. */
public final class Coming {
	private Coming() {
	}

	/** @return for example "energised in heating", "DISPUTED: 1 or 2" or "GAP: needed, and no rule gives a value" */
	public static String to(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> outcome.value().orElseThrow().text();
			case DISPUTED -> "DISPUTED: " + outcome.deciding().stream().map(p -> p.value().text()).distinct().collect(Collectors.joining(" or "))
					+ "; a person has to decide";
			case GAP -> "GAP: needed, and no rule gives a value";
			case PERHAPS -> "PERHAPS NEEDED: no rule gives a value";
		};
	}

	/** @return the same in two or three words */
	public static String briefly(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> outcome.value().orElseThrow().text();
			case DISPUTED -> "disputed";
			case GAP -> "a gap";
			case PERHAPS -> "perhaps needed";
		};
	}

	/** @return the rules that decide it; empty when none does */
	public static String by(SettingOutcome outcome) {
		return outcome.proposals().isEmpty() ? ""
				: outcome.deciding().stream().map(p -> Named.withAuthority(p.rule())).distinct().collect(Collectors.joining("; "));
	}

	/** @return how it stands out */
	public static Tone tone(SettingOutcome outcome) {
		return switch (outcome.state()) {
			case SETTLED -> Tone.PLAIN;
			case DISPUTED, GAP -> Tone.ALARM;
			case PERHAPS -> Tone.ATTENTION;
		};
	}
}
