package org.setwright.editions.impact;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.UnitSystem;

/** What a job comes to, told so that two outcomes can be compared: rules and where they stand do not count. */
public final class Telling {
	/** What a setting without any outcome comes to. */
	public static final String NOT_NEEDED = "not needed";
	/** What a caution that is not raised, or a check that is not asked for, comes to. */
	public static final String ABSENT = "absent";

	private Telling() {
	}

	/** A kind of thing that a job comes to. */
	public enum Kind {
		SETTING, CAUTION, START_UP
	}

	/** One thing a job comes to. @param words a setting's name, a caution's or a check's words @param setting only of a setting */
	public record Point(Kind kind, String words, Optional<Setting> setting) {
	}

	/** @return everything that {@code outcome} holds, in its order */
	public static Map<Point, String> of(Outcome outcome) {
		Map<Point, String> told = new LinkedHashMap<>();
		for (SettingOutcome setting : outcome.settings()) {
			told.put(new Point(Kind.SETTING, setting.setting().label(), Optional.of(setting.setting())), told(setting));
		}
		for (Caution caution : outcome.cautions()) {
			told.put(new Point(Kind.CAUTION, caution.kind().label() + ": " + caution.sentence(), Optional.empty()), "raised");
		}
		for (StartUpCheck check : outcome.startUp()) {
			String words = check.phase().label() + ": " + check.callFor().text(UnitSystem.IP) + " " + check.see().text(UnitSystem.IP) + " "
					+ check.ifNot().text(UnitSystem.IP) + check.pause().map(p -> " " + p.text(UnitSystem.IP)).orElse("");
			told.put(new Point(Kind.START_UP, words, Optional.empty()), check.certain() ? "asked for" : "perhaps asked for");
		}
		return told;
	}

	/** @return what {@code setting} comes to in {@code outcome}, in words */
	public static String of(Outcome outcome, Setting setting) {
		return outcome.setting(setting).map(Telling::told).orElse(NOT_NEEDED);
	}

	private static String told(SettingOutcome setting) {
		return switch (setting.state()) {
			case SETTLED -> setting.value().orElseThrow().text();
			case DISPUTED -> "dispute: " + setting.deciding().stream().map(p -> p.value().text()).distinct().sorted().collect(Collectors.joining(" or "));
			case GAP -> "gap";
			case PERHAPS -> "perhaps needed, and no rule says";
		};
	}

	/** @return what stands for a point that an outcome does not hold */
	static String missing(Point point) {
		return point.kind() == Kind.SETTING ? NOT_NEEDED : ABSENT;
	}
}
