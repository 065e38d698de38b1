package org.setwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** Finds the kinds and fields that names in a job file mean, and says what was probably meant by the others. */
final class FieldNames {
	private static final int MOST_OFFERED = 3;
	private final Catalogue catalogue;
	private final ProblemList problems;

	FieldNames(Catalogue catalogue, ProblemList problems) {
		this.catalogue = catalogue;
		this.problems = problems;
	}

	/** @return the kind of fact called {@code key}, or empty after reporting it */
	Optional<FactKind> kind(Scalar key) {
		String name = Keys.normal(key.text());
		Optional<FactKind> kind = catalogue.kindCalled(name);
		if (kind.isEmpty()) {
			List<String> near = Nearest.several(name, Stream.concat(JobKeys.ALL.stream(), stated().map(FactKind::key)).toList(), MOST_OFFERED);
			problems.error(key, "There is no " + Misfit.quoted(key.text()) + " in a job file.", remedyForKind(name), near);
		} else if (kind.get().calculated()) {
			problems.error(key.start(), "The " + kind.get().label() + " is worked out from other answers, never written.",
					"Remove it.");
			return Optional.empty();
		}
		return kind;
	}

	private String remedyForKind(String name) {
		Optional<FactKind> named = stated().filter(k -> Keys.normal(k.label()).equals(name) || k.name().equalsIgnoreCase(name)).findFirst();
		if (named.isPresent()) {
			return write(named.get().key());
		} else if (catalogue.settingLabelled(name).isPresent()) {
			return "Settings stand under \"" + JobKeys.EXPECT + ":\", indented.";
		}
		Optional<String> owner = stated().filter(k -> k.fieldLabelled(name).isPresent()).map(FactKind::key).findFirst();
		if (owner.isPresent()) {
			return "Write it under \"" + owner.get() + ":\", indented.";
		}
		List<String> names = new ArrayList<>(JobKeys.ALL);
		stated().map(FactKind::key).forEach(names::add);
		return Nearest.to(name, names).map(FieldNames::write).orElse("Write one of: " + String.join(", ", names) + ".");
	}

	/** @return the field of {@code kind} called {@code key}, or empty after reporting it */
	Optional<Field> field(FactKind kind, Scalar key) {
		String name = Keys.normal(key.text());
		Optional<Field> field = kind.fieldLabelled(name);
		if (field.isEmpty()) {
			List<String> labels = kind.fields().stream().filter(f -> f.calculation().isEmpty()).map(Field::label).toList();
			problems.error(key, "There is no " + Misfit.quoted(key.text()) + " for the " + kind.label() + ".",
					remedyForField(kind, name), Nearest.several(name, labels, MOST_OFFERED));
		} else if (field.get().calculation().isPresent()) {
			problems.error(key.start(), "The " + kind.label() + "'s " + field.get().label() + " is worked out ("
					+ field.get().calculation().get().formula() + "), never written.", "Remove it.");
			return Optional.empty();
		}
		return field;
	}

	private String remedyForField(FactKind kind, String name) {
		List<Field> asked = kind.fields().stream().filter(f -> f.calculation().isEmpty()).toList();
		List<String> labels = asked.stream().map(Field::label).toList();
		Optional<String> near = asked.stream().filter(f -> f.name().equalsIgnoreCase(name)).map(Field::label).findFirst()
				.or(() -> Nearest.to(name, labels));
		Optional<String> begun = labels.stream().filter(l -> name.startsWith(l + " ") || name.startsWith(l + ":")).findFirst();
		if (begun.isPresent()) {
			return "Write a colon and a blank between \"" + begun.get() + "\" and its value.";
		} else if (near.isPresent()) {
			return write(near.get());
		}
		Optional<String> owner = stated().filter(k -> k.key().equalsIgnoreCase(name)).map(k -> "Write \"" + k.key() + ":\" without indent.")
				.findFirst().or(() -> stated().filter(k -> k.fieldLabelled(name).isPresent()).findFirst()
						.map(k -> "Write it under \"" + k.key() + ":\"."));
		return owner.orElse("Write one of: " + String.join(", ", labels) + ".");
	}

	private Stream<FactKind> stated() {
		return catalogue.kinds().stream().filter(k -> !k.calculated());
	}

	private static String write(String word) {
		return "Write \"" + word + "\".";
	}
}
