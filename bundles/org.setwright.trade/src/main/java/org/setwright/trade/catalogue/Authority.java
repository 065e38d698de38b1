package org.setwright.trade.catalogue;

import java.util.Optional;

/** How much weight a proposal carries. Declared from weakest to strongest; a stronger one outranks a weaker one. */
public enum Authority implements Choice {
	FACTORY_DEFAULT("factory default", "What the controller does when nobody changes it."),
	SHOP_PRACTICE("shop practice", "What this shop does unless something better is known."),
	MAKERS_INSTRUCTIONS("maker's instructions", "What the maker of the equipment or controller says in writing."),
	OBSERVED_ON_SITE("observed on site", "What somebody measured or saw on this very job."),
	CODE_OR_SAFETY("code or safety", "What a code demands or safety leaves no choice about.");

	private final String label;
	private final String meaning;

	Authority(String label, String meaning) {
		this.label = label;
		this.meaning = meaning;
	}

	@Override
	public String label() {
		return label;
	}

	@Override
	public String meaning() {
		return meaning;
	}

	/** @return whether this outranks {@code other}; equal authorities do not outrank each other */
	public boolean outranks(Authority other) {
		return compareTo(other) > 0;
	}

	/** @param text a label, any case; not null @return the authority so called, or empty */
	public static Optional<Authority> named(String text) {
		return Choice.named(Authority.class, text);
	}
}
