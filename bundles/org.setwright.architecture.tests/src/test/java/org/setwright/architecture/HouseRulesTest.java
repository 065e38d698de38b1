package org.setwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaModifier;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setwright.trade.catalogue.Fact;

/** How code is written here. */
class HouseRulesTest {
	private static final int LONGEST_FILE = 400;
	/** Files that may be longer, each with its reason. */
	private static final Map<String, String> LONGER_FOR_A_REASON = Map.of();
	private static final Pattern DRAWER = Pattern.compile(".*(Manager|Helper|Util|Utils|Impl)\\.java");
	private static final Pattern DRAWER_PACKAGE = Pattern.compile(".*/(util|utils|common|impl|model)/[^/]*\\.java");

	@Test
	void factsAreRecords() {
		classes().that(assignableTo(Fact.class)).and().areNotInterfaces().should().beRecords().because("facts are immutable")
				.check(Sources.classesOf("trade"));
	}

	@Test
	void outcomesAreRecordsOrClosedChoices() {
		classes().that().resideInAPackage("org.setwright.engine.outcome..").and().areNotInterfaces().and().areNotEnums()
				.should().beRecords().because("outcomes cross threads").check(Sources.classesOf("engine"));
	}

	@Test
	void onlyTheCommandPrints() {
		noClasses().that().resideOutsideOfPackage("org.setwright.command..").should(ACCESS_STANDARD_STREAMS)
				.because("libraries answer, and only the program prints").check(Sources.headlessClasses());
		noClasses().that().doNotHaveSimpleName("Surroundings").should(ACCESS_STANDARD_STREAMS)
				.because("the program prints where it is told to, so that tests can read it").check(Sources.classesOf("command"));
	}

	@Test
	void fieldsThatNeverChangeSaySo() {
		classes().that().resideInAPackage("org.setwright.trade.catalogue..").and().areNotEnums().and().areNotInterfaces().and().areNotRecords()
				.should().haveOnlyFinalFields().andShould().haveModifier(JavaModifier.FINAL).check(Sources.classesOf("trade"));
	}

	@Test
	void filesStayShort() {
		assertNone(f -> Sources.lines(f) > LONGEST_FILE && !LONGER_FOR_A_REASON.containsKey(name(f)),
				"longer than " + LONGEST_FILE + " lines; split them, or add a reason to this test");
	}

	@Test
	void reasonsForLongFilesAreStillNeeded() {
		List<String> tooLong = Sources.javaFiles().stream().filter(f -> Sources.lines(f) > LONGEST_FILE).map(HouseRulesTest::name).toList();
		LONGER_FOR_A_REASON.keySet().forEach(f -> assertTrue(tooLong.contains(f), f + " is short enough now; take its reason out"));
	}

	@Test
	void nothingIsNamedAfterADrawer() {
		assertNone(f -> DRAWER.matcher(name(f)).matches() || DRAWER_PACKAGE.matcher(name(f)).matches(),
				"named after a drawer; name them after what the trade or the user calls the thing");
	}

	@Test
	void sourcesSpeakOfTheProjectAlone() {
		Pattern machinePath = Pattern.compile("\"/(work|tmp|root|home)/");
		assertNone(f -> !f.toString().contains("architecture") && machinePath.matcher(Sources.text(f)).find(), "naming a folder of some machine");
	}

	@Test
	void theTestsSawTheFiles() {
		assertTrue(Sources.javaFiles().size() > 100, "saw only " + Sources.javaFiles().size() + " source files");
	}

	private static void assertNone(Predicate<Path> broken, String what) {
		String files = Sources.javaFiles().stream().filter(broken).map(HouseRulesTest::name).collect(Collectors.joining("\n"));
		assertEquals("", files, "files " + what);
	}

	private static String name(Path file) {
		return file.toString().replace('\\', '/');
	}
}
