package org.setwright.writing.completing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.completing.Offer.Offered;

/** Offers what may be written next in {@code settings.yaml}. */
public final class SettingsCompletion {
	private final Catalogue catalogue;

	/** @param catalogue what the book may speak of */
	public SettingsCompletion(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/** @return what may be written at {@code offset} of {@code text}, which may be half-written */
	public Offered at(String text, int offset) {
		return YamlPlace.at(text, offset).map(p -> Offered.of(p.start(), p.typed(), offers(p))).orElse(Offered.NOTHING);
	}

	private List<Offer> offers(YamlPlace place) {
		if (place.names().isEmpty()) {
			return List.of(new Offer("settings: ", "", "The list of what the shop sets beyond what Setwright knows."));
		} else if (!place.value()) {
			return place.names().size() > 1 ? List.of() : List.of(new Offer("setting: ", "", "What people and files call it."),
					new Offer("group: ", "", "The heading it stands under."), new Offer("meaning: ", "", "What it does, in a sentence."),
					new Offer("values: ", "", "What may be set."), new Offer("needed: ", "", "Which jobs must have it; only those where a rule proposes it when left out."));
		}
		return switch (place.names().get(place.names().size() - 1).toLowerCase(Locale.ROOT)) {
			case "group" -> catalogue.settings().stream().map(Setting::group).distinct().map(g -> new Offer(g, "", "")).toList();
			case "values" -> List.of(new Offer("yes or no", "", ""), new Offer("[off, on]", "", "Names, each once."), new Offer("0 to 4", "", "Whole numbers, both ends included."),
					new Offer("34 °F to 45 °F", "", "Quantities in any unit of the same sort, both ends included."));
			case "needed" -> Stream.concat(Stream.of(new Offer(Setting.ALWAYS, "", "Every job needs it.")),
					catalogue.kinds().stream().map(k -> new Offer(k.name() + "( )", k.label(), k.meaning()))).toList();
			default -> List.of();
		};
	}
}
