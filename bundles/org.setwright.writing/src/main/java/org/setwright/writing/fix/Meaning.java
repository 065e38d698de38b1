package org.setwright.writing.fix;

import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Setting;

/** Says what an offered word means, so that nobody picks one by its looks. */
final class Meaning {
	private Meaning() {
	}

	/** @return what a setting, fact or authority means; "" for other words */
	static String of(String word, Catalogue catalogue) {
		String plain = word.replace("\"", "");
		Stream<Optional<String>> meanings = Stream.of(catalogue.setting(plain).or(() -> catalogue.settingLabelled(plain)).map(Setting::meaning),
				catalogue.kind(plain).map(FactKind::meaning), Authority.named(plain).map(Authority::meaning));
		return meanings.flatMap(Optional::stream).findFirst().orElse("");
	}
}
