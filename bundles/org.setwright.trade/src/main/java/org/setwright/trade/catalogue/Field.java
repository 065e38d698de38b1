package org.setwright.trade.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * The catalogue entry of one field of a fact.
 *
 * @param name its word in rules, for example {@code valveEnergisedIn}
 * @param label what people and files call it
 * @param meaning the trade's meaning in one sentence
 * @param domain which values it may take
 * @param changesOnSite whether somebody on site can change it
 * @param naming whether it alone names an item of a list
 * @param calculation how it is computed; empty when it is asked for
 */
public record Field(String name, String label, String meaning, Domain domain, boolean changesOnSite, boolean naming,
		Optional<Calculation> calculation) {

	/** How a calculated field is computed. @param from the fields it needs, each as {@code Kind.field} */
	public record Calculation(List<String> from, String formula, String source) {
		public Calculation {
			from = List.copyOf(from);
		}
	}

	/** Fields are compared and hashed for every answer of every run; the name alone spreads them well enough. */
	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Field field && name.equals(field.name) && label.equals(field.label)
				&& meaning.equals(field.meaning) && domain.equals(field.domain) && changesOnSite == field.changesOnSite
				&& naming == field.naming && calculation.equals(field.calculation);
	}

	@Override
	public int hashCode() {
		return name.hashCode();
	}
}
