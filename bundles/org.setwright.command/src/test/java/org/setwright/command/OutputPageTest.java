package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.command.answer.Report;

/** OUTPUT.md and what the program prints say the same, field by field and column by column. */
class OutputPageTest {
	private static final Pattern FIELD = Pattern.compile("\\| `([\\w.\\[\\]]+)\\??` \\|.*");
	private static final Pattern WORD = Pattern.compile("`(\\w+)`");
	/** The sample book that runs has no problems; setup lists warnings as check does. */
	private static final Set<String> PROBLEM = Set.of("problems[].severity", "problems[].file", "problems[].line", "problems[].column",
			"problems[].what", "problems[].remedy");
	/** The sample books live in no repository; EditionsWordsTest looks at these. */
	private static final Set<String> EDITION = Set.of("edition.edition", "edition.on", "edition.by", "edition.signed", "edition.demanded",
			"edition.notKept[]", "edition.fault");
	private static final String NESTED = ".reasons[].madeBy[]";
	private static final String FROM = ".calculation.from[]";

	/** Together these make the program print every field a word has. */
	@ParameterizedTest(name = "{0}")
	@CsvSource(delimiter = '|', textBlock = """
			jobs  | elm jobs, broken jobs
			check | elm check, elm check mill, walls check, broken check, broken setup bad, broken why bad
			setup | elm setup --all
			startup | elm startup larch, elm startup mill, elm startup new
			why   | elm why larch, elm why mill, elm why new, elm why mill sign, elm why mill heater
			silent | elm silent mill
			instead | elm instead mill spare 1
			landing | walls landing four, walls landing spare, walls landing pump, walls landing open, walls landing line, walls landing sensor
			coverage | elm coverage, walls coverage
			strength | elm strength --search, walls strength
			matters | elm matters larch
			apart | elm apart larch mill
			read | elm read stages
			words | elm words
			bench | elm bench larch --script ../../scripts/heater.txt, elm bench larch --script ../../scripts/slip.txt, elm bench larch --script ../../scripts/refused.txt
			""")
	void everyFieldPrintedIsDescribedAndEveryFieldDescribedIsPrinted(String word, String asked) throws IOException {
		Set<String> printed = new TreeSet<>(word.equals("setup") ? PROBLEM : Set.of());
		printed.addAll(word.equals("setup") ? EDITION : Set.of());
		for (String one : asked.split(", ")) {
			String[] words = (one + " --as json").split(" ");
			printed.addAll(fields(Typed.inSampleBook(words[0]).type(Arrays.copyOfRange(words, 1, words.length)).out()));
		}
		assertEquals(String.join("\n", described(word)), String.join("\n", printed));
	}

	@ParameterizedTest
	@ValueSource(strings = { "jobs", "check", "setup --all", "startup larch", "why larch", "silent mill", "instead mill spare 1", "landing four", "coverage", "strength", "matters larch", "apart larch mill", "read stages", "words", "bench larch --script ../../scripts/slip.txt" })
	void columnsAreAsDescribed(String words) throws IOException {
		String header = Typed.inSampleBook(words.startsWith("landing") ? "walls" : "elm").type((words + " --as csv").split(" ")).out().lines().findFirst().orElseThrow();
		assertTrue(page().contains("| `" + words.split(" ")[0] + "` | `" + header + "` |"), header);
	}

	@Test
	void theShapeDescribedIsTheShapePrinted() throws IOException {
		assertTrue(page().contains("**shape " + Report.SHAPE + "**"));
		assertTrue(Typed.inSampleBook("elm").type("jobs", "--as", "json").out().contains("\"shape\" : " + Report.SHAPE));
	}

	/** The fields in the tables whose heading line names {@code word}, or every word, or all but others. */
	static Set<String> described(String word) throws IOException {
		Set<String> fields = new TreeSet<>();
		boolean about = false;
		for (String line : page().substring(0, page().indexOf("## CSV")).lines().toList()) {
			Matcher field = FIELD.matcher(line);
			if (line.endsWith(":")) {
				about = line.startsWith("Every") || WORD.matcher(line).results().anyMatch(m -> m.group(1).equals(word)) != line.startsWith("All but");
			} else if (about && field.matches()) {
				fields.add(field.group(1));
			}
		}
		return fields;
	}

	static String page() throws IOException {
		return Files.readString(Path.of("OUTPUT.md"));
	}

	/** The places of all values; empty lists and objects have none; reasons within reasons count as the outer ones. */
	static Set<String> fields(String json) throws IOException {
		Set<String> fields = new TreeSet<>();
		try (JsonParser parser = new JsonFactory().createParser(json)) {
			for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
				if (token.isScalarValue()) {
					fields.addAll(field(parser.getParsingContext().pathAsPointer().toString()));
				}
			}
		}
		return fields;
	}

	private static List<String> field(String pointer) {
		String field = pointer.substring(1).replaceAll("/\\d+", "[]").replace('/', '.').replace(FROM + FROM, FROM);
		String outer = field.replace(NESTED, "");
		return field.equals(outer) ? List.of(field) : List.of(outer, field.substring(0, field.indexOf(NESTED)) + NESTED);
	}
}
