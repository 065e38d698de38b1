package org.setwright.architecture;

import static com.tngtech.archunit.core.importer.ImportOption.Predefined.DO_NOT_INCLUDE_TESTS;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What the architecture tests look at: the classes of the headless bundles, and every source file. */
final class Sources {
	/** The headless bundles, each below the next. */
	static final List<String> HEADLESS = List.of("trade", "book", "engine", "writing", "picture", "landing", "check", "bench", "check.junit", "editions", "command");
	private static final Path BUNDLES = Path.of("..").toAbsolutePath().normalize();

	private Sources() {
	}

	/** @return the compiled classes of one headless bundle, without its tests */
	static JavaClasses classesOf(String bundle) {
		return new ClassFileImporter().withImportOption(DO_NOT_INCLUDE_TESTS)
				.importPath(BUNDLES.resolve("org.setwright." + bundle).resolve("target/classes"));
	}

	/** @return the compiled classes of all headless bundles, without their tests */
	static JavaClasses headlessClasses() {
		return new ClassFileImporter().withImportOption(DO_NOT_INCLUDE_TESTS).importPaths(
				HEADLESS.stream().map(b -> BUNDLES.resolve("org.setwright." + b).resolve("target/classes")).toList());
	}

	/** @return every Java file of every bundle, tests and the window included, as paths below the bundles folder */
	static List<Path> javaFiles() {
		try (Stream<Path> files = Files.walk(BUNDLES)) {
			return files.filter(f -> f.toString().endsWith(".java")).map(BUNDLES::relativize)
					.filter(f -> !f.toString().contains("target")).sorted().toList();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** @return how many lines {@code file} (as listed) has */
	static long lines(Path file) {
		return text(file).lines().count();
	}

	/** @return what stands in {@code file} (as listed) */
	static String text(Path file) {
		try {
			return Files.readString(BUNDLES.resolve(file));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
