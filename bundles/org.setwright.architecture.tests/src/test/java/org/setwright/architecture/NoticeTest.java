package org.setwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** NOTICE.md lists everything that ships. */
class NoticeTest {
	private static final Path TOP = Path.of("../..");
	private static final Pattern LISTED = Pattern.compile("`([\\w.*-]+)`");
	private static final Pattern IN_TARGET = Pattern.compile("<artifactId>([^<]+)</artifactId>");

	@Test
	void listsTheLibrariesOfTheHeadlessProgram() throws IOException {
		try (Stream<Path> jars = Files.list(TOP.resolve("bundles/org.setwright.command/target/lib"))) {
			assertListed(jars.map(j -> j.getFileName().toString().replaceFirst("-\\d.*", "")).filter(n -> !n.startsWith("org.setwright")).toList(), 30);
		}
	}

	@Test
	void listsTheBundlesOfTheWorkbench() throws IOException {
		String target = Files.readString(TOP.resolve("releng/platform/setwright.target"));
		assertListed(IN_TARGET.matcher(target).results().map(r -> r.group(1)).toList(), 100);
	}

	private static void assertListed(List<String> libraries, int fewest) throws IOException {
		assertTrue(libraries.size() >= fewest, () -> "saw only " + libraries.size() + " libraries");
		List<Pattern> listed = LISTED.matcher(Files.readString(TOP.resolve("NOTICE.md"))).results().map(NoticeTest::pattern).toList();
		assertEquals(List.of(), libraries.stream().filter(l -> listed.stream().noneMatch(p -> p.matcher(l).matches())).toList());
	}

	private static Pattern pattern(MatchResult listed) {
		return Pattern.compile(listed.group(1).replace(".", "\\.").replace("*", ".*"));
	}
}
