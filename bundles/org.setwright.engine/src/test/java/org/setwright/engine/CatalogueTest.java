package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Setting;

/** What the catalogue says in the rule language can be read by it. */
class CatalogueTest {
	static Stream<Setting> conditionalSettings() {
		return Trade.catalogue().settings().stream()
				.filter(s -> !s.requiredWhen().equals(Setting.ALWAYS) && !s.requiredWhen().equals(Setting.OPTIONAL));
	}

	@ParameterizedTest
	@MethodSource("conditionalSettings")
	void whenASettingIsNeededCanBeRead(Setting setting) {
		assertEquals(List.of(), RuleParser.conditions("", setting.requiredWhen(), Trade.catalogue()).problems());
	}
}
