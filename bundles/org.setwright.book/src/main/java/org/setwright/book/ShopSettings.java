package org.setwright.book;

import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * The settings a book may propose. Immutable.
 *
 * @param trade the facts and settings of the trade alone
 * @param catalogue the facts and settings of the trade, and those the shop has added in {@code settings.yaml}
 * @param own what the shop has added, in file order
 */
public record ShopSettings(Catalogue trade, Catalogue catalogue, List<ShopSetting> own) {
	/** Where a book adds settings, below its folder. */
	public static final String FILE = "settings.yaml";

	public ShopSettings {
		own = List.copyOf(own);
	}

	/** @return nothing added to {@code trade} */
	public static ShopSettings none(Catalogue trade) {
		return new ShopSettings(trade, trade, List.of());
	}

	/** @return {@code own} added to {@code trade}, which must not know them */
	static ShopSettings added(Catalogue trade, List<ShopSetting> own) {
		return new ShopSettings(trade, trade.with(own.stream().map(ShopSetting::setting).toList()), own);
	}

	/** @return how the book adds {@code setting}; empty when the trade knows it already */
	public Optional<ShopSetting> own(Setting setting) {
		return own.stream().filter(s -> s.setting().id().equals(setting.id())).findFirst();
	}
}
