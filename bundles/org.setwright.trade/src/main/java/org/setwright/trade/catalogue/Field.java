package org.setwright.trade.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * The catalogue entry of one field of a fact.
 *
 * @param name its word in rules, for example {@code valveEnergisedIn}
 * @param label what people and files call it
 * @param meaning the trade's meaning in one sentence
 * @param says how a sentence about the fact says it, with {} where the answer goes; for yes and no two, with | between
 * @param domain which values it may take
 * @param changesOnSite whether somebody on site can change it
 * @param naming whether it alone names an item of a list
 * @param calculation how it is computed; empty when it is asked for
 */
public record Field(String name, String label, String meaning, String says, Domain domain, boolean changesOnSite, boolean naming,
		Optional<Calculation> calculation) {

	/**
	 * How a calculated field is computed.
	 *
	 * @param from the stated fields it needs, each as {@code Kind.field}
	 * @param through the calculated fields it is computed by way of, each as {@code Kind.field}
	 */
	public record Calculation(List<String> from, List<String> through, String formula, String source) {
		public Calculation {
			from = List.copyOf(from);
			through = List.copyOf(through);
		}
	}

	/** Fields are compared and hashed for every answer of every run; the name alone spreads them well enough. */
	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Field field && name.equals(field.name) && label.equals(field.label)
				&& meaning.equals(field.meaning) && says.equals(field.says) && domain.equals(field.domain) && changesOnSite == field.changesOnSite
				&& naming == field.naming && calculation.equals(field.calculation);
	}

	@Override
	public int hashCode() {
		return name.hashCode();
	}
}
