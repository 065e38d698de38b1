package org.setwright.trade.catalogue;

/**
 * The catalogue entry of one thing to be set on the controller.
 *
 * @param id its word in rules, for example {@code CHANGEOVER_VALVE}
 * @param label what people and files call it, for example "changeover valve"
 * @param group the heading it stands under on screens and sheets
 * @param meaning the trade's meaning in one sentence
 * @param domain which values it may take
 * @param requiredWhen the condition, in the rule language, under which a job must have it; empty when it is optional,
 *        {@link #ALWAYS} when every job must
 */
public record Setting(String id, String label, String group, String meaning, Domain domain, String requiredWhen) {
	/** Every job needs this setting. */
	public static final String ALWAYS = "always";
	/** No job needs this setting; it is made only when a rule proposes it. */
	public static final String OPTIONAL = "";

	/** It is the same setting as long as it has the same id: a shop may word its own settings better from one edition to the next. */
	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Setting setting && id.equals(setting.id);
	}

	/** @return whether everything said of it is the same, too */
	boolean saysAs(Setting other) {
		return this == other || id.equals(other.id) && label.equals(other.label) && group.equals(other.group) && meaning.equals(other.meaning)
				&& domain.equals(other.domain) && requiredWhen.equals(other.requiredWhen);
	}

	@Override
	public int hashCode() {
		return id.hashCode();
	}
}
