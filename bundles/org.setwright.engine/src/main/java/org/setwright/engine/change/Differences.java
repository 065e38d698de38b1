package org.setwright.engine.change;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;

/** Which settings two outcomes differ in. */
public final class Differences {
	private Differences() {
	}

	/** @return the settings that are in another state or have another value */
	public static List<Setting> between(Outcome one, Outcome other) {
		Set<Setting> differing = new LinkedHashSet<>();
		one.settings().forEach(s -> differing.add(s.setting()));
		other.settings().forEach(s -> differing.add(s.setting()));
		differing.removeIf(s -> said(one, s).equals(said(other, s)));
		return List.copyOf(differing);
	}

	private static String said(Outcome outcome, Setting setting) {
		return outcome.setting(setting).map(Differences::said).orElse("");
	}

	private static String said(SettingOutcome outcome) {
		return outcome.state() + " " + outcome.value().map(v -> v.plain().toString()).orElse("");
	}
}
