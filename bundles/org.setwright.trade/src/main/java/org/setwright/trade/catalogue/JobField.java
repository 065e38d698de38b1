package org.setwright.trade.catalogue;

import java.util.Optional;

/**
 * A place in a job: one field of one fact, or (without a field) whether the job has facts of a kind at all.
 *
 * @param item which of several facts of the kind, from 0
 * @param field empty for the question whether there is any
 */
public record JobField(FactKind kind, int item, Optional<Field> field) {

	/** @return the place of {@code field} in the {@code item}th (from 0) fact of {@code kind} */
	public static JobField of(FactKind kind, int item, Field field) {
		return new JobField(kind, item, Optional.of(field));
	}

	/** @return the place that says whether the job has any {@code kind} */
	public static JobField presence(FactKind kind) {
		return new JobField(kind, 0, Optional.empty());
	}

	/** @return for example "outdoor unit: maker", "wire 3: colour", or "whether there is a humidifier" */
	public String label() {
		if (field.isEmpty()) {
			return kind.many() ? "which " + kind.key() + " there are" : "whether there is " + kind.one();
		}
		return kind.label() + (kind.many() ? " " + (item + 1) : "") + ": " + field.get().label();
	}
}
