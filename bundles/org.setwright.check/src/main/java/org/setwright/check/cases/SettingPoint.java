package org.setwright.check.cases;

import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.Position;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/**
 * What a setting is expected to come to, beside what it came to.
 *
 * @param path of the job's file
 * @param wanted empty when nothing is expected of it
 * @param outcome empty when the job neither needs the setting nor gets it
 */
public record SettingPoint(String path, Setting setting, Optional<Expectation> wanted, Optional<SettingOutcome> outcome) implements Point {
	/** Differences below this share of a base unit come from conversion alone. */
	private static final double GRAIN = 2e-6;

	@Override
	public Standing standing() {
		return wanted.map(w -> met(w) ? Standing.MET : Standing.NOT_MET).orElse(Standing.NOT_ASKED);
	}

	private boolean met(Expectation expected) {
		if (expected instanceof Settled settled) {
			return value().filter(v -> close(v, settled)).isPresent();
		} else if (expected instanceof DecidedBy decided) {
			return value().filter(v -> decided.is().isEmpty() || close(v, decided.is().get())).isPresent() && decides(decided.rule());
		} else if (expected instanceof JobCase.Gap) {
			return state().filter(State.GAP::equals).isPresent();
		} else if (expected instanceof JobCase.Dispute) {
			return state().filter(State.DISPUTED::equals).isPresent();
		}
		return expected instanceof JobCase.NotSet ? value().isEmpty() : outcome.isEmpty();
	}

	private static boolean close(Value came, Settled settled) {
		if (settled.within().isEmpty() || came.same(settled.value())) {
			return came.same(settled.value());
		}
		Quantity within = settled.within().get();
		double allowed = came instanceof Value.Count ? within.number() : within.base();
		return Math.abs(((Number) came.plain()).doubleValue() - ((Number) settled.value().plain()).doubleValue()) <= allowed + GRAIN;
	}

	/** A table's name stands for any of its rows. */
	boolean decides(String rule) {
		return outcome.orElseThrow().deciding().stream().map(p -> p.rule().name())
				.anyMatch(name -> name.equals(rule) || name.startsWith("table ") && name.replaceFirst(", row \\d+$", "").equals(rule));
	}

	private Optional<Value> value() {
		return outcome.flatMap(SettingOutcome::value);
	}

	private Optional<State> state() {
		return outcome.map(SettingOutcome::state);
	}

	@Override
	public String what() {
		return setting.label();
	}

	@Override
	public String expected() {
		return wanted.map(Expectation::text).orElse("");
	}

	@Override
	public String came() {
		if (outcome.isEmpty()) {
			return "not needed";
		}
		return switch (outcome.get().state()) {
			case SETTLED -> value().orElseThrow().text() + (wanted.orElse(null) instanceof DecidedBy ? ", by " + rules() : "");
			case DISPUTED -> "dispute: " + outcome.get().deciding().stream().map(p -> p.value().text()).distinct().collect(Collectors.joining(" or "));
			case GAP -> "gap";
			case PERHAPS -> "perhaps needed, and no rule says";
		};
	}

	private String rules() {
		return outcome.orElseThrow().deciding().stream().map(p -> p.rule().name()).distinct().collect(Collectors.joining(" and "));
	}

	@Override
	public Position at() {
		return wanted.map(Expectation::at).orElse(Position.whole(path));
	}
}
