package org.setwright.command.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;

/**
 * One entry of the catalogue.
 *
 * @param sort "fact", "answer" (a field of a fact), "setting" or "part of a start-up"
 * @param of the fact an answer belongs to, the group of a setting; empty for a fact
 * @param label in job files and for people
 * @param word in rules
 * @param allowed what it may be
 * @param domain where the values to choose from come from; empty for a fact
 * @param note how it is computed, when it is needed, whether there may be several; may be empty
 */
record Entry(String sort, String of, String label, String word, String meaning, String allowed, Optional<Domain> domain, String note) {

	static Stream<Entry> all(FactKind kind) {
		return Stream.concat(Stream.of(of(kind)), kind.fields().stream().map(f -> of(kind, f)));
	}

	static Entry of(Setting setting) {
		String needed = setting.requiredWhen().equals(Setting.ALWAYS) ? "needed on every job"
				: setting.requiredWhen().isEmpty() ? "made only when a rule proposes it" : "needed when " + setting.requiredWhen();
		return new Entry("setting", setting.group(), setting.label(), setting.id(), setting.meaning(), setting.domain().allowed(),
				Optional.of(setting.domain()), needed);
	}

	static Entry of(StartUpPhase phase) {
		return new Entry("part of a start-up", "start-up", phase.label(), phase.name(), phase.meaning(), "number " + (phase.ordinal() + 1) + " in the order of a start-up",
				Optional.empty(), "");
	}

	private static Entry of(FactKind kind) {
		String presence = kind.calculated() ? "worked out, never written in a job file"
				: kind.always() ? "every job has one" : kind.many() ? "a job may have several, or none" : "a job has one, or none";
		return new Entry("fact", "", kind.key(), kind.name(), kind.meaning(), presence, Optional.empty(), "");
	}

	private static Entry of(FactKind kind, Field field) {
		String note = field.calculation().map(c -> "worked out: " + c.formula() + " (" + c.source() + ")").orElse("");
		return new Entry("answer", kind.key(), field.label(), field.name(), field.meaning(), field.domain().allowed(),
				Optional.of(field.domain()), note);
	}

	/** @return whether this is the very thing called {@code text} (lower case) */
	boolean called(String text) {
		return label.toLowerCase(Locale.ROOT).equals(text) || word.toLowerCase(Locale.ROOT).equals(text)
				|| (of + ": " + label).toLowerCase(Locale.ROOT).equals(text);
	}

	/** @return whether {@code text} (lower case) is part of its name, or of one of the values to choose from */
	boolean mentions(String text) {
		return Stream.concat(Stream.of(label, word, of), options().stream().flatMap(o -> Stream.of(o.label(), o.id())))
				.anyMatch(name -> name.toLowerCase(Locale.ROOT).contains(text));
	}

	/** @return the values to choose from; empty when they are not a closed list */
	List<Domain.Choices.Option> options() {
		return domain.filter(Domain.Choices.class::isInstance).map(d -> ((Domain.Choices) d).options()).orElse(List.of());
	}
}
