package org.setwright.writing.uses;

import java.util.Optional;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Value;

/** Tells which values are things of their own: the shop's own words, and those of a closed list. */
final class Values {
	private Values() {
	}

	/** @param written for people, or as in rules @return the value of {@code about}; empty for numbers and the like */
	static Optional<Thing> of(Thing about, String written) {
		if (about instanceof Thing.OfField of && of.field().domain() instanceof Domain.Words) {
			return written.isBlank() || written.equalsIgnoreCase("unknown") ? Optional.empty()
					: Optional.of(new Thing.OfValue(of.kind(), of.field(), written));
		} else if (about instanceof Thing.OfField of && of.field().domain() instanceof Domain.Choices choices) {
			return choices.read(written).flatMap(v -> of(about, v));
		} else if (about instanceof Thing.OfSetting of && of.setting().domain() instanceof Domain.Choices choices) {
			return choices.read(written).flatMap(v -> of(about, v));
		}
		return Optional.empty();
	}

	/** @return {@code value} of {@code about}; empty for numbers and the like */
	static Optional<Thing> of(Thing about, Value value) {
		if (value instanceof Value.Words words && about instanceof Thing.OfField of) {
			return Optional.of(new Thing.OfValue(of.kind(), of.field(), words.words()));
		} else if (value instanceof Value.OneOf one && about instanceof Thing.OfField of) {
			return Optional.of(new Thing.OfChoice(of.kind(), of.field(), one.option()));
		}
		return value instanceof Value.OneOf one && about instanceof Thing.OfSetting of
				? Optional.of(new Thing.OfSettingChoice(of.setting(), one.option())) : Optional.empty();
	}
}
