package org.setwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/** Reads the list of what a job does not have. */
final class NotFitted {
	private final Catalogue catalogue;
	private final ProblemList problems;
	private final Map<FactKind, Job.Entry> entries;
	private final Map<JobField, Position> positions;

	/** @param entries what the file says of kinds by their own names; completed here, as are {@code positions} */
	NotFitted(Catalogue catalogue, ProblemList problems, Map<FactKind, Job.Entry> entries,
			Map<JobField, Position> positions) {
		this.catalogue = catalogue;
		this.problems = problems;
		this.entries = entries;
		this.positions = positions;
	}

	void read(YamlNode written) {
		List<Scalar> rest = new ArrayList<>();
		for (YamlNode item : written instanceof Sequence list ? list.items() : List.of(written)) {
			if (!(item instanceof Scalar scalar) || scalar.saysNothing()) {
				problems.error(item.start(), "The names of what is not fitted are expected here.",
						"Write them between brackets, for example \"" + JobKeys.NOT_FITTED + ": [" + example() + "]\".");
			} else if (JobKeys.says(JobKeys.EVERYTHING_ELSE, scalar.text())) {
				rest.add(scalar);
			} else {
				kind(scalar).ifPresent(kind -> none(kind, scalar));
			}
		}
		rest.stream().findFirst().ifPresent(this::everythingElse);
	}

	private void none(FactKind kind, Scalar written) {
		Position place = positions.get(JobField.presence(kind));
		Job.Entry stated = entries.get(kind);
		if (kind.always()) {
			problems.error(written.start(), "Every job has a " + kind.label() + ", so it cannot be missing.", "Remove it from the list.");
		} else if (stated == null) {
			entries.put(kind, Job.Entry.NONE);
			positions.put(JobField.presence(kind), problems.at(written.start()));
		} else if (stated.presence() == Job.Presence.NONE) {
			problems.warning(written.start(), "That there is no " + kind.label() + " is already said on line " + place.line() + ".",
					"Remove one of the two.");
		} else {
			problems.error(written.start(), "The " + kind.label() + " is said to be not fitted, but line " + place.line()
					+ " says otherwise.", "Remove the wrong one of the two.");
		}
	}

	private void everythingElse(Scalar written) {
		for (FactKind kind : catalogue.kinds()) {
			if (!kind.always() && !entries.containsKey(kind)) {
				entries.put(kind, Job.Entry.NONE);
				positions.put(JobField.presence(kind), problems.at(written.start()));
			}
		}
	}

	private Optional<FactKind> kind(Scalar written) {
		Optional<FactKind> kind = named(catalogue, written.text());
		if (kind.isEmpty()) {
			List<String> names = new ArrayList<>(removable());
			names.add(JobKeys.EVERYTHING_ELSE);
			problems.error(written.start(), "There is no " + Misfit.quoted(written.text()) + " that could be fitted or not.",
					Nearest.to(written.text(), names).map(n -> "Write \"" + n + "\".").orElse("Write any of: " + String.join(", ", names) + "."));
		}
		return kind;
	}

	/** @return the kind whose label or key is {@code text} (any case), or empty */
	static Optional<FactKind> named(Catalogue catalogue, String text) {
		String name = Keys.normal(text);
		return catalogue.kinds().stream()
				.filter(k -> Keys.normal(k.label()).equals(name) || Keys.normal(k.key()).equals(name)).findFirst();
	}

	private List<String> removable() {
		return catalogue.kinds().stream().filter(k -> !k.always()).map(FactKind::key).toList();
	}

	private String example() {
		return removable().stream().limit(2).reduce((a, b) -> a + ", " + b).orElse(JobKeys.EVERYTHING_ELSE);
	}
}
