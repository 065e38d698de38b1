package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

class ShopSettingTextTest {
	private static final String LAMP = "  - meaning: Shines.\n    values: yes or no\n    setting: lamp";
	private static final String SIREN = "  # asked for by Odd\n  # in May\n  - { setting: siren, meaning: Sounds., values: [off, on call] } # loud";

	private static List<ShopSettingText> all(String text) {
		return ShopSettingText.all(text, Trade.catalogue()).orElseThrow();
	}

	private static List<String> texts(String text) {
		List<ShopSettingText> all = all(text);
		String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
		all.forEach(s -> assertEquals(s.text(), plain.substring(s.start(), s.end())));
		return all.stream().map(ShopSettingText::text).toList();
	}

	@Test
	void everySettingHasItsLinesAndTheCommentsDirectlyAbove() {
		assertEquals(List.of(LAMP, SIREN), texts("# ours\nsettings:\n" + LAMP + "\n\n" + SIREN + "\n# the end\n"));
		assertEquals(List.of(LAMP, SIREN), texts("\uFEFFsettings:\n" + LAMP + "\n" + SIREN));
		assertEquals(List.of(LAMP.replace("  - meaning", "  -\n    meaning")), texts("settings:\n" + LAMP.replace("  - meaning", "  -\n    meaning") + "\n"));
		assertEquals(List.of("LAMP", "SIREN"), all("settings:\n" + LAMP + "\n" + SIREN).stream().map(s -> s.setting().id()).toList());
		assertEquals(4, all("settings:\n" + LAMP + "\n").get(0).at().line());
	}

	@Test
	void betweenBracketsEachHasWhatStandsBetweenItsBraces() {
		String siren = "{ setting: siren, meaning: Sounds., values: yes or no }";
		assertEquals(List.of(siren, siren.replace("siren", "lamp")), texts("settings: [ " + siren + ", " + siren.replace("siren", "lamp") + " ] # all\n"));
	}

	@Test
	void aFileWithErrorsIsNotTakenApartAndAnEmptyOneHoldsNone() {
		assertEquals(Optional.empty(), ShopSettingText.all("settings:\n" + LAMP.replace("values", "valeus"), Trade.catalogue()));
		assertEquals(List.of(), all(""));
		assertEquals(List.of(), all("settings:\n"));
	}
}
