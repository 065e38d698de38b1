package org.setwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MessagesTest {
	private static final Path SOURCES = Path.of("src");

	static List<Path> texts() throws IOException {
		try (Stream<Path> files = Files.walk(SOURCES)) {
			return files.filter(f -> f.endsWith("messages.properties")).sorted().toList();
		}
	}

	@ParameterizedTest
	@MethodSource("texts")
	void everyTextIsUsedAndEveryUseHasItsText(Path file) throws IOException, ReflectiveOperationException {
		Properties texts = new Properties();
		try (Reader reader = Files.newBufferedReader(file)) {
			texts.load(reader);
		}
		String packageName = SOURCES.relativize(file.getParent()).toString().replace(file.getFileSystem().getSeparator(), ".");
		Class<?> messages = Class.forName(packageName + ".Messages");
		assertEquals(Arrays.stream(messages.getFields()).filter(f -> f.getDeclaringClass() == messages).map(Field::getName)
				.collect(Collectors.toCollection(TreeSet::new)), new TreeSet<>(texts.stringPropertyNames()));
		String sources = sources(file.getParent());
		for (String key : texts.stringPropertyNames()) {
			assertEquals(true, sources.contains("Messages." + key), key + " is used nowhere in " + packageName);
		}
	}

	private static String sources(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			StringBuilder all = new StringBuilder();
			for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
				all.append(Files.readString(file));
			}
			return all.toString();
		}
	}
}
