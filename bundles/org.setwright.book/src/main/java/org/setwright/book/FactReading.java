package org.setwright.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Reads what a job file says about one kind of fact. */
final class FactReading {
	private final FieldNames names;
	private final ProblemList problems;
	private final Map<JobField, Position> positions;

	/** @param positions where the place of every answer read is put */
	FactReading(FieldNames names, ProblemList problems, Map<JobField, Position> positions) {
		this.names = names;
		this.problems = problems;
		this.positions = positions;
	}

	/** @return what {@code written} says; unknown after a problem that leaves nothing to read */
	Job.Entry entry(FactKind kind, YamlNode.Entry written) {
		YamlNode value = written.value();
		if (value instanceof Scalar scalar) {
			return scalar(kind, scalar);
		} else if (kind.many()) {
			return several(kind, value);
		} else if (value instanceof Mapping mapping) {
			return Job.Entry.of(List.of(fact(kind, 0, mapping)));
		}
		problems.error(value.start(), "A job has only one " + kind.label() + ", and a list stands here.",
				"Write its answers under \"" + kind.key() + ":\" without dashes.");
		return Job.Entry.UNKNOWN;
	}

	private Job.Entry scalar(FactKind kind, Scalar scalar) {
		if (scalar.saysNothing()) {
			problems.error(scalar.start(), "Nothing is written after \"" + kind.key() + ":\".",
					"Write its answers, \"unknown\" when nobody has looked" + (kind.always() ? "." : ", or \"none\" when there is none."));
		} else if (JobKeys.says(JobKeys.NONE, scalar.text())) {
			return none(kind, scalar);
		} else if (JobKeys.says(JobKeys.FITTED, scalar.text()) && !kind.many()) {
			return Job.Entry.of(List.of(kind.create(Map.of())));
		} else if (!JobKeys.says(JobKeys.UNKNOWN, scalar.text())) {
			problems.error(scalar.start(), Misfit.quoted(scalar.text()) + " does not say which answer about the "
					+ kind.label() + " it is.", remedy(kind, scalar.text()));
		}
		return Job.Entry.UNKNOWN;
	}

	private Job.Entry none(FactKind kind, Scalar scalar) {
		if (!kind.always()) {
			return Job.Entry.NONE;
		}
		problems.error(scalar.start(), "Every job has a " + kind.label() + ", so it cannot be \"none\".",
				"Write \"unknown\", or what is known.");
		return Job.Entry.UNKNOWN;
	}

	private static String remedy(FactKind kind, String text) {
		if (List.of("yes", "true", "present", "installed", "no", "false", "absent").contains(Keys.normal(text))) {
			boolean yes = !List.of("no", "false", "absent").contains(Keys.normal(text));
			return yes && kind.many() ? "Write each on a line of its own that begins with a dash."
					: "Write \"" + (yes ? JobKeys.FITTED : JobKeys.NONE) + "\".";
		}
		String field = kind.fields().stream().filter(f -> f.calculation().isEmpty())
				.filter(f -> text.length() <= JobKeys.LONGEST_VALUE && f.domain().read(text).isPresent()).findFirst()
				.or(() -> kind.fields().stream().findFirst()).map(Field::label).orElseThrow();
		return "Write the name of the answer too, for example \"" + kind.key() + ": " + (kind.many() ? "[" : "") + "{ " + field
				+ ": " + text.strip() + " }" + (kind.many() ? "]" : "") + "\".";
	}

	private Job.Entry several(FactKind kind, YamlNode value) {
		List<Fact> facts = new ArrayList<>();
		if (value instanceof Mapping mapping) {
			problems.error(value.start(), "A job may have several " + kind.key() + ", so a list is expected here.",
					"Begin each " + kind.label() + " with a dash, on a line of its own.");
			facts.add(fact(kind, 0, mapping));
		} else {
			for (YamlNode item : ((Sequence) value).items()) {
				facts.add(item(kind, facts.size(), item));
			}
		}
		if (facts.isEmpty()) {
			problems.error(value.start(), "The list of " + kind.key() + " is empty, which says neither none nor unknown.",
					"Write \"" + (kind.always() ? JobKeys.UNKNOWN : JobKeys.NONE) + "\", or remove the line when nobody has looked.");
			return Job.Entry.UNKNOWN;
		}
		return Job.Entry.of(facts);
	}

	private Fact item(FactKind kind, int item, YamlNode written) {
		if (written instanceof Mapping mapping) {
			return fact(kind, item, mapping);
		}
		Optional<Field> naming = kind.fields().stream().filter(Field::naming).findFirst();
		if (written instanceof Scalar scalar && (naming.isPresent() || JobKeys.says(JobKeys.UNKNOWN, scalar.text()))) {
			Map<Field, Value> known = new HashMap<>();
			naming.ifPresent(field -> answer(kind, item, field, scalar).ifPresent(v -> known.put(field, v)));
			return kind.create(known);
		}
		problems.error(written.start(), "This does not say which answer about the " + kind.label() + " it is.",
				"Write names and values, for example \"- " + kind.fields().get(0).label() + ": unknown\".");
		return kind.create(Map.of());
	}

	private Fact fact(FactKind kind, int item, Mapping mapping) {
		Map<Field, Value> known = new HashMap<>();
		for (YamlNode.Entry entry : Keys.of(mapping, problems).entries()) {
			names.field(kind, entry.key())
					.ifPresent(field -> answer(kind, item, field, entry.value()).ifPresent(v -> known.put(field, v)));
		}
		return kind.create(known);
	}

	/** @return the value written, or empty when it is unknown or wrong */
	private Optional<Value> answer(FactKind kind, int item, Field field, YamlNode written) {
		positions.put(JobField.of(kind, item, field), problems.at(written.start()));
		if (!(written instanceof Scalar scalar)) {
			problems.error(written.start(), "A list or group stands where one value of " + field.label() + " is expected.",
					"Write " + field.domain().allowed() + ", or \"unknown\".");
			return Optional.empty();
		} else if (scalar.saysNothing()) {
			problems.error(written.start(), "Nothing is written for " + field.label() + ".",
					"Write \"unknown\" when nobody has looked, or remove it.");
			return Optional.empty();
		} else if (problems.refusedLines(scalar, field.label()) || JobKeys.says(JobKeys.UNKNOWN, scalar.text())) {
			return Optional.empty();
		}
		Optional<Value> value = scalar.text().length() > JobKeys.LONGEST_VALUE ? Optional.empty()
				: field.domain().read(scalar.text());
		if (value.isEmpty()) {
			Misfit misfit = Misfit.of(field.label(), scalar.text(), field.domain());
			problems.error(scalar, misfit.what(), misfit.remedy(), Misfit.near(scalar.text(), field.domain()));
		}
		return value;
	}
}
