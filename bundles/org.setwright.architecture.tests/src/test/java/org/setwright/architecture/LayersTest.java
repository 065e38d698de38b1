package org.setwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may depend on whom. */
class LayersTest {
	private static final String[] RULE_ENGINE = { "org.drools..", "org.kie..", "org.mvel..", "org.mvel2..", "org.antlr.." };

	/** One row a bundle: what it may use besides the JDK and itself. */
	@ParameterizedTest(name = "{0} uses only {1}")
	@CsvSource(delimiter = '|', textBlock = """
			trade   |
			book    | org.setwright.trade.. org.snakeyaml.engine.. org.apache.commons.csv..
			engine  | org.setwright.trade.. org.setwright.book.. org.drools.. org.kie.. org.mvel.. org.mvel2.. org.antlr..
			writing | org.setwright.trade.. org.setwright.book.. org.setwright.engine..
			picture | org.setwright.trade.. org.setwright.book.. org.setwright.engine.. org.eclipse.elk.. org.eclipse.emf..
			landing | org.setwright.trade.. org.setwright.engine.. org.jgrapht..
			check   | org.setwright.trade.. org.setwright.book.. org.setwright.engine..
			bench   | org.setwright.trade.. org.setwright.book.. org.setwright.engine.. org.setwright.check..
			check.junit | org.setwright.trade.. org.setwright.book.. org.setwright.engine.. org.setwright.check.. org.junit.platform.engine.. org.opentest4j..
			editions | org.setwright.trade.. org.setwright.book.. org.setwright.engine.. org.setwright.check.. org.eclipse.jgit..
			command | org.setwright.trade.. org.setwright.book.. org.setwright.engine.. org.setwright.picture.. org.setwright.landing.. org.setwright.check.. org.setwright.bench.. org.setwright.editions.. org.jline.. picocli.. com.fasterxml.jackson.core.. org.apache.commons.csv..
			""")
	void eachBundleUsesOnlyWhatStandsBelowIt(String bundle, String others) {
		List<String> allowed = new ArrayList<>(List.of("java..", "javax..", "org.setwright." + bundle + "..", ""));
		allowed.addAll(others == null ? List.of() : List.of(others.split(" ")));
		classes().should().onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)))
				.because("the layers of DEVELOPERS.md keep every bundle usable without those above it").check(Sources.classesOf(bundle));
	}

	@Test
	@DisplayName("only the engine's running package knows Drools")
	void onlyRunningKnowsDrools() {
		noClasses().that(resideOutsideOfPackages("org.setwright.engine.running..")).should().dependOnClassesThat(resideInAnyPackage(RULE_ENGINE))
				.because("everything else works on our own records, so that the engine can be exchanged").check(Sources.headlessClasses());
	}

	@Test
	void onlyOneClassKnowsTheLayoutLibrary() {
		noClasses().that().doNotHaveFullyQualifiedName("org.setwright.picture.Arranged").should()
				.dependOnClassesThat(resideInAnyPackage("org.eclipse.elk..", "org.eclipse.emf.."))
				.because("pictures are records of our own, so that the layout library can be exchanged").check(Sources.headlessClasses());
	}

	@Test
	void onlyThePackageForGitKnowsTheGitLibrary() {
		noClasses().that(resideOutsideOfPackages("org.setwright.editions.git..")).should().dependOnClassesThat(resideInAnyPackage("org.eclipse.jgit.."))
				.because("everything else works on our own records, so that views need not know it").check(Sources.headlessClasses());
	}

	@Test
	void nothingHeadlessKnowsTheWindow() {
		noClasses().should().dependOnClassesThat(resideInAnyPackage("org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui..", "org.eclipse.core..",
				"org.eclipse.e4..", "org.osgi..", "org.setwright.workbench..", "java.awt..", "javax.swing.."))
				.because("the headless program starts without a window").check(Sources.headlessClasses());
	}

	@ParameterizedTest(name = "{0}")
	@CsvSource({ "trade", "book", "engine", "writing", "picture", "landing", "check", "bench", "check.junit", "editions", "command" })
	void packagesOfABundleFormNoCycle(String bundle) {
		slices().matching("org.setwright." + bundle + "(**)").should().beFreeOfCycles().allowEmptyShould(true).check(Sources.classesOf(bundle));
	}

	@ParameterizedTest(name = "{0} has at least {1} classes")
	@CsvSource({ "trade, 30", "book, 10", "engine, 20", "writing, 15", "picture, 8", "landing, 20", "check, 15", "bench, 25", "check.junit, 8", "editions, 40", "command, 20" })
	void theTestsSawTheClasses(String bundle, int fewest) {
		int seen = Sources.classesOf(bundle).size();
		assertTrue(seen >= fewest, () -> "saw only " + seen + " classes of " + bundle + ": is it compiled?");
	}
}
