package org.setwright.workbench.jobform;

import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.trade.catalogue.Value;

/**
 * What somebody has written into a field.
 *
 * @param answer empty when it is not understood
 * @param refusal why not and what to write; empty when it is understood
 */
record FieldReading(Optional<Answer<Value>> answer, String refusal) {

	/** @param text nothing, and the word for unknown, both mean unknown @param shown in which units quantities are shown */
	static FieldReading of(Domain domain, UnitSystem shown, String text) {
		String written = text.strip();
		if (written.isEmpty() || written.equalsIgnoreCase(Messages.FieldReading_unknown)) {
			return new FieldReading(Optional.of(Answer.unknown()), ""); //$NON-NLS-1$
		}
		Optional<Value> value = domain.read(written).or(() -> domain.read(withUnit(domain, shown, written)));
		return value.isPresent() ? new FieldReading(value.map(Answer::of), "") //$NON-NLS-1$
				: new FieldReading(Optional.empty(), NLS.bind(Messages.FieldReading_refused, written, domain.allowed()));
	}

	/** A number alone is meant in the unit that stands beside the field. */
	private static String withUnit(Domain domain, UnitSystem shown, String written) {
		return domain instanceof Domain.Measure measure && written.matches("[-+]?[0-9][0-9.,]*") //$NON-NLS-1$
				? written + " " + shown.unit(measure.unit()).symbol() : written; //$NON-NLS-1$
	}

	/** @return how {@code answer} is written into a field: nothing for unknown; in both kinds of units as somebody wrote it */
	static String written(Answer<Value> answer, UnitSystem shown) {
		return answer.value().map(v -> v instanceof Value.Amount amount && shown != UnitSystem.BOTH ? shown.text(amount.quantity()) : v.text())
				.orElse(""); //$NON-NLS-1$
	}
}
