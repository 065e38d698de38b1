package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hook for a server that DEVELOPERS.md and README.md speak of lets only editions in that may go out. */
class ServerHookTest {
	private static final Pattern HOOK = Pattern.compile("^```bash pre-receive\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);
	private static final String RULE = """
			rule "One stage"
			    @authority( shop practice )
			    @because( "They have one." )
			    @source( common practice )
			when
			    OutdoorUnit( )
			then
			    propose( COOL_STAGES, 1 );
			end
			""";

	@TempDir
	Path folder;

	@Test
	void onlySignedEditionsComeIn() throws IOException, InterruptedException {
		Path place = folder.resolve("place.git");
		Path shop = folder.resolve("shop");
		run(folder, 0, "git", "init", "-q", "--bare", "-b", "main", place.toString());
		run(folder, 0, "git", "init", "-q", "-b", "main", shop.toString());
		for (String[] set : new String[][] { { "user.name", "Trine Aasen" }, { "user.email", "trine@fennimore.example" }, { "commit.gpgSign", "false" },
				{ "tag.gpgSign", "false" } }) {
			run(shop, 0, "git", "config", set[0], set[1]);
		}
		hook(place);
		Path book = shop.resolve("practice");
		Files.createDirectories(book.resolve("rules"));
		Files.createDirectories(book.resolve("jobs"));
		Files.writeString(book.resolve("book.yaml"), "book: Practice\nsign-off: demanded\n");
		Files.writeString(book.resolve("rules/a.drl"), RULE);
		Files.writeString(book.resolve("jobs/one.yaml"), "job: One\noutdoor unit: { stages: 1 }\nexpect: { cooling stages: 1 }\n");
		Typed.At at = Typed.in(book);
		Typed kept = new Typed.At(at.catalogue(), shop, book, 80, false, true).type("keep", "--because", "We begin.", "--book", book.toString());
		assertEquals(0, kept.exit(), kept.err());
		String refused = run(shop, 1, "git", "push", "-q", place.toString(), "main");
		assertTrue(refused.contains("Nobody has signed edition"), refused);
		new Typed.At(at.catalogue(), shop, book, 80, false, true).type("sign", "--book", book.toString());
		run(shop, 0, "git", "push", "-q", place.toString(), "main", "refs/tags/signed-off/*:refs/tags/signed-off/*");
		assertEquals(run(shop, 0, "git", "rev-parse", "main"), run(place, 0, "git", "rev-parse", "main"));
		Files.writeString(book.resolve("rules/a.drl"), RULE.replace("1 )", "2 )"));
		run(shop, 0, "git", "commit", "-qam", "Two");
		assertTrue(run(shop, 1, "git", "push", "-q", place.toString(), "main").contains("Not every job comes to what it expects: One."));
		run(place, 0, "git", "fsck", "--strict");
	}

	/** Writes the hook as the page shows it, with this very program in the place of the one that would be installed. */
	private void hook(Path place) throws IOException {
		Matcher shown = HOOK.matcher(Files.readString(Path.of("EDITIONS.md")));
		assertTrue(shown.find(), "EDITIONS.md shows no hook");
		Path program = folder.resolve("setwright");
		Files.writeString(program, "#!/bin/sh\nexec '" + Path.of(System.getProperty("java.home"), "bin", "java") + "' -cp '"
				+ System.getProperty("java.class.path") + "' "
				+ Main.class.getName() + " \"$@\"\n");
		Path hook = place.resolve("hooks/pre-receive");
		Files.createDirectories(hook.getParent());
		Files.writeString(hook, shown.group(1).replace("/opt/setwright/setwright", program.toString()));
		program.toFile().setExecutable(true);
		hook.toFile().setExecutable(true);
	}

	private static String run(Path where, int exit, String... words) throws IOException, InterruptedException {
		List<String> all = new ArrayList<>(List.of(words));
		ProcessBuilder builder = new ProcessBuilder(all).directory(where.toFile()).redirectErrorStream(true);
		builder.environment().keySet().removeIf(k -> k.startsWith("GIT_"));
		Process process = builder.start();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
		assertEquals(exit, process.waitFor(), said);
		return said;
	}
}
