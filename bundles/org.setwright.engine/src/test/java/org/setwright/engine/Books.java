package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.book.Book;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.trade.Trade;

/** Makes small books for tests. */
final class Books {
	static final String FILE = "rules/test.drl";

	private Books() {
	}

	static Book of(String rules, Table... tables) {
		return new Book(Path.of("").toAbsolutePath(), "Test", Trade.catalogue(), List.of(new Book.RuleFile(FILE, rules)),
				List.of(tables), List.of());
	}

	/** Compiles rules that must have no problems. */
	static Edition edition(String rules, Table... tables) {
		Compilation compilation = compile(rules, tables);
		assertEquals("", compilation.problems().stream().map(Problem::toString).collect(Collectors.joining("\n")));
		return compilation.edition().orElseThrow();
	}

	static Compilation compile(String rules, Table... tables) {
		return Edition.compile(of(rules, tables));
	}

	/** A rule with everything but conditions and outcome filled in. */
	static String rule(String name, String authority, String when, String then) {
		return "rule \"" + name + "\"\n\t@authority( \"" + authority + "\" )\n\t@because( \"Testing.\" )\n"
				+ "\t@source( common practice )\nwhen\n\t" + when + "\nthen\n\t" + then + "\nend\n\n";
	}
}
