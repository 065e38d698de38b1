package org.setwright.workbench.jobform;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;

/** Finds the question of the form behind a field: for a calculated one, the first question it is calculated from. */
final class AskedFor {
	private final Catalogue catalogue;

	AskedFor(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/** @return a field that the form asks, or empty when there is none behind {@code field} */
	Optional<JobField> behind(JobField field) {
		return behind(field, new HashSet<>());
	}

	private Optional<JobField> behind(JobField field, Set<Field> seen) {
		if (field.field().isEmpty()) {
			return field.kind().calculated() ? Optional.empty() : Optional.of(field);
		} else if (field.field().get().calculation().isEmpty()) {
			return Optional.of(field);
		}
		return !seen.add(field.field().get()) ? Optional.empty()
				: field.field().get().calculation().get().from().stream().flatMap(from -> named(from).stream())
						.flatMap(f -> behind(f, seen).stream()).findFirst();
	}

	private Optional<JobField> named(String name) {
		int dot = name.indexOf('.');
		Optional<FactKind> kind = catalogue.kind(dot < 0 ? name : name.substring(0, dot));
		return dot < 0 ? kind.map(JobField::presence)
				: kind.flatMap(k -> k.field(name.substring(dot + 1)).map(f -> JobField.of(k, 0, f)));
	}
}
