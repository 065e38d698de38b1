package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setwright.book.BookReader;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/** What a rule book accepts is a true subset: Drools' own parser reads the same files and finds the same rules. */
class TrueSubsetTest {
	static Stream<Path> starterRules() throws IOException {
		return Files.list(Path.of("../../rules/starter/rules")).sorted();
	}

	@ParameterizedTest
	@MethodSource("starterRules")
	void theStarterBookIsDrl(Path file) throws Exception {
		agree(Files.readString(file), BookReader.catalogue(Path.of("../../rules/starter"), Trade.catalogue()));
	}

	@ParameterizedTest
	@MethodSource("randomRules")
	void randomRulesAreDrl(String rules) throws Exception {
		agree(rules, Trade.catalogue());
	}

	static Stream<String> randomRules() {
		return Stream.of(1L, 2L, 3L, 4L).map(seed -> new RandomBooks(seed).rules(20));
	}

	private static void agree(String text, Catalogue catalogue) throws Exception {
		DrlParser parser = new DrlParser();
		PackageDescr read = parser.parse(true, text);
		assertFalse(parser.hasErrors(), () -> parser.getErrors().toString());
		List<Rule> ours = RuleParser.parse("rules/x.drl", text, catalogue).rules();
		assertEquals(ours.stream().map(Rule::name).toList(), read.getRules().stream().map(RuleDescr::getName).toList());
	}
}
