package org.setwright.book;

import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.Setting;

/**
 * A setting that a book adds to those of the trade.
 *
 * @param setting its entry; what {@link Setting#requiredWhen} says has not been checked against the rule language
 * @param at where its name stands
 * @param valuesAt where each of its values stands, when they are listed; in their order
 * @param neededAt where the conditions begin under which a job needs it; empty when there are none to be read
 */
public record ShopSetting(Setting setting, Position at, List<Position> valuesAt, Optional<Position> neededAt) {
	public ShopSetting {
		valuesAt = List.copyOf(valuesAt);
	}
}
