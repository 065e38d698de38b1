package org.setwright.book;

import java.util.List;

/**
 * What reading {@code settings.yaml} gives.
 *
 * @param settings as far as they could be read
 * @param problems what is wrong, by position
 */
public record ShopSettingsText(ShopSettings settings, List<Problem> problems) {
	public ShopSettingsText {
		problems = List.copyOf(problems);
	}

	/** @return whether it has no errors */
	public boolean sound() {
		return problems.stream().noneMatch(p -> p.severity() == Problem.Severity.ERROR);
	}
}
