package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The words about editions, typed in the order in which a shop would; names and days of editions are replaced in what is accepted. */
class EditionsWordsTest {
	private static final Path SAMPLE = Path.of("src/test/resources/books/elm");
	private static final Pattern NAME = Pattern.compile("\\b[0-9a-f]{40}\\b|\\b[0-9a-f]{10}\\b");
	@TempDir
	Path folder;
	private Path book;
	private Typed.At at;
	private final Map<String, String> names = new LinkedHashMap<>();

	@BeforeEach
	void copyTheSampleBook() throws IOException {
		book = folder.resolve("book");
		try (Stream<Path> files = Files.walk(SAMPLE)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				Path copy = book.resolve(SAMPLE.relativize(file).toString());
				Files.createDirectories(copy.getParent());
				Files.copy(file, copy);
			}
		}
		at = new Typed.At(Sample.CATALOGUE, book, book, 80, false, true);
	}

	private String git(String... words) throws IOException {
		List<String> all = new ArrayList<>(List.of("git"));
		all.addAll(List.of(words));
		Process process = new ProcessBuilder(all).directory(book.toFile()).redirectErrorStream(true).start();
		return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
	}

	private void change(String file, String from, String to) throws IOException {
		String text = Files.readString(book.resolve(file));
		assertTrue(text.contains(from), from);
		Files.writeString(book.resolve(file), text.replace(from, to));
	}

	private void begun() throws IOException {
		assertEquals(0, at.type("keep", "--begin").exit());
		git("symbolic-ref", "HEAD", "refs/heads/main");
		git("config", "user.name", "Trine Aasen");
		git("config", "user.email", "trine@fennimore.example");
		git("config", "commit.gpgSign", "false");
		assertEquals(0, at.type("keep", "--because", "We begin.").exit());
	}

	/** What was typed and answered, with editions numbered as they appear. */
	private String story(int exit, String... words) {
		Typed typed = at.type(words);
		assertEquals(exit, typed.exit(), typed.out() + typed.err());
		String all = "> " + String.join(" ", words) + "\n" + typed.out() + typed.err();
		Matcher name = NAME.matcher(all);
		StringBuilder plain = new StringBuilder();
		while (name.find()) {
			String number = names.computeIfAbsent(name.group().substring(0, 10), x -> String.valueOf((char) ('A' + names.size())));
			name.appendReplacement(plain, number.repeat(name.group().length()));
		}
		return name.appendTail(plain).toString().replaceAll("\\d{4}-\\d\\d-\\d\\dT[^\"]*", "TIME").replaceAll("\\d{4}-\\d\\d-\\d\\d-\\d{6}-\\d{3}", "DAY-AND-TIME")
				.replaceAll("\\d{4}-\\d\\d-\\d\\d", "2026-DAY").replace(folder.toString(), "FOLDER") + "\n";
	}

	@Test
	void aShopKeepsComparesAndAnswers() throws IOException {
		StringBuilder story = new StringBuilder(story(3, "editions"));
		begun();
		story.append(story(0, "keep")).append(story(0, "setup", "larch"));
		change("rules/pump.drl", "propose( VALVE, POWERED_IN_COOLING )", "propose( VALVE, POWERED_IN_HEATING )");
		change("rules/fan.drl", "\"20 min\"", "\"25 min\"");
		story.append(story(0, "changes")).append(story(0, "changes", "--texts")).append(story(0, "keep")).append(story(1, "setup", "larch"));
		story.append(story(0, "keep", "--because", "The new pumps heat with the valve powered."));
		change("rules/pump.drl", "Most pumps power", "Nearly all pumps power");
		story.append(story(0, "keep", "--message", "Plainer words"));
		story.append(story(0, "editions")).append(story(0, "editions", "--rule", "needs its valve"))
				.append(story(0, "editions", "--file", "rules/fan.drl"));
		story.append(story(0, "answers", "needs its valve")).append(story(0, "answers", "rules/fan.drl:3"))
				.append(story(2, "answers", "rules/fan.drl:900"));
		story.append(story(0, "since", "larch", "fan minutes")).append(story(2, "since", "nobody", "valve"));
		story.append(story(0, "restore", "HEAD~2", "--rule", "large house")).append(story(3, "restore", "HEAD~2")).append(story(3, "restore", "feedfeed"));
		story.append(story(0, "changes", "HEAD~2")).append(story(0, "changes", "HEAD~1", "HEAD~1"));
		Golden.check("editions-kept.txt", story.toString());
		assertEquals("", git("fsck", "--strict").replaceAll("(?m)^(notice|dangling).*", "").strip());
	}

	@Test
	void settingsOfTheShopsOwnAreToldOneByOne() throws IOException {
		begun();
		Files.writeString(book.resolve("settings.yaml"), "settings:\n  - { setting: pump exercise, meaning: Turns the pump., values: [off, daily] }\n");
		assertEquals(0, at.type("keep", "--because", "Pumps seize.").exit());
		change("settings.yaml", "[off, daily] }", "[off, daily, weekly] }\n  - { setting: frost guard, meaning: Keeps floors warm., values: yes or no }");
		StringBuilder story = new StringBuilder(story(0, "changes", "HEAD~1", "HEAD")).append(story(0, "changes")).append(story(0, "changes", "--texts"));
		story.append(story(0, "changes", "--as", "csv")).append(story(0, "changes", "--as", "json")).append(story(0, "keep"));
		Golden.check("editions-settings.txt", story.toString());
	}

	@Test
	void aShopTriesAndJoins() throws IOException {
		begun();
		StringBuilder story = new StringBuilder(story(0, "trial", "winter", "--begin"));
		change("rules/fan.drl", "\"20 min\"", "\"25 min\"");
		at.type("keep", "--because", "On trial.");
		story.append(story(0, "trial", "main"));
		change("rules/fan.drl", "\"20 min\"", "\"15 min\"");
		story.append(story(3, "join", "winter"));
		at.type("keep", "--because", "In force.");
		story.append(story(3, "trial", "nowhere")).append(story(1, "join", "winter")).append(story(2, "join", "winter", "--there", "no such"));
		story.append(story(0, "join", "winter", "--there", "large house")).append(story(0, "join", "winter"));
		git("init", "-q", "--bare", "-b", "main", folder.resolve("place.git").toString());
		story.append(story(3, "send")).append(story(0, "send", "shop", "--address", folder.resolve("place.git").toString()))
				.append(story(0, "send", "shop"));
		story.append(story(0, "receive", "shop")).append(story(0, "trial"));
		Golden.check("editions-joined.txt", story.toString());
	}

	@Test
	void aTrainerReviewsAndSigns() throws IOException {
		begun();
		at.type("accept", "mill", "--by", "Trine Aasen", "--because", "As the sheet says.");
		at.type("keep", "--because", "As the sheet says.");
		change("book.yaml", "book:", "sign-off: demanded\nbook:");
		at.type("keep", "--because", "Somebody has to sign from now on.");
		StringBuilder story = new StringBuilder(story(1, "verify")).append(story(0, "remark"));
		story.append(story(0, "remark", "Is that so in a cold place?", "--rule", "large house")).append(story(3, "sign")).append(story(0, "review"));
		story.append(story(0, "remark", "Yes, see the sheet.", "--on", "large", "--settles"))
				.append(story(0, "remark", "Measured.", "--job", "larch", "--setting", "fan minutes", "--settles"));
		story.append(story(0, "remark")).append(story(0, "keep", "--message", "Remarks")).append(story(0, "sign", "--note", "Ready for the winter."))
				.append(story(0, "verify"));
		story.append(story(0, "setup", "mill")).append(story(0, "editions"));
		change("rules/fan.drl", "\"20 min\"", "\"25 min\"");
		at.type("keep", "--because", "Longer.");
		story.append(story(0, "review")).append(story(1, "verify"));
		Golden.check("editions-signed.txt", story.toString());
	}

	@Test
	void theyPrintForOtherProgramsAsDescribed() throws IOException {
		begun();
		at.type("trial", "winter", "--begin");
		change("rules/fan.drl", "\"20 min\"", "\"25 min\"");
		at.type("keep", "--because", "On trial.");
		at.type("trial", "main");
		change("rules/fan.drl", "\"20 min\"", "\"15 min\"");
		at.type("keep", "--because", "In force.");
		git("init", "-q", "--bare", "-b", "main", folder.resolve("place.git").toString());
		at.type("send", "shop", "--address", folder.resolve("place.git").toString());
		for (String words : List.of("editions", "keep", "changes HEAD~1 HEAD", "answers", "since larch valve", "trial", "join winter", "send shop",
				"remark Why?", "review", "restore HEAD~1 --rule large",
				"verify")) {
			described(words);
		}
		at.type("remark", "Well.", "--on", "book", "--settles");
		at.type("remark", "Well.", "--on", "book-2", "--settles");
		described("sign");
		Set<String> fields = new TreeSet<>(OutputPageTest.fields(at.type("setup", "larch", "--as", "json").out()));
		fields.removeIf(f -> !f.startsWith("edition"));
		assertEquals(OutputPageTest.described("setup").stream().filter(f -> f.startsWith("edition")).collect(Collectors.toCollection(TreeSet::new)),
				fields);
	}

	private void described(String typed) throws IOException {
		String word = typed.split(" ")[0];
		Typed csv = at.type((typed + " --as csv").split(" "));
		String header = csv.out().lines().findFirst().orElseThrow(() -> new AssertionError(typed + ": " + csv.err()));
		assertTrue(OutputPageTest.page().contains("| `" + word + "` | `" + header + "` |"), word + ": " + header);
		if (!word.equals("restore") && !word.equals("keep")) {
			assertEquals(String.join("\n", OutputPageTest.described(word)), String.join("\n",
					OutputPageTest.fields(at.type((typed + " --as json").split(" ")).out())));
		}
	}
}
