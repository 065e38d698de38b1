package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.setwright.book.ExpectedCheck;
import org.setwright.book.ExpectedFinding;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.Misfit;
import org.setwright.book.Nearest;
import org.setwright.book.Position;
import org.setwright.book.Problem;

/** Looks whether the rules, tables and findings that job cases name are there: what is expected not to come is easily misspelt. */
public final class ExpectedNames {
	private final Set<String> rules = new TreeSet<>();
	private final Set<String> findings = new TreeSet<>();
	private final List<Problem> problems = new ArrayList<>();

	private ExpectedNames(Collection<Rule> rules) {
		rules.forEach(rule -> {
			this.rules.add(rule.name());
			this.rules.add(ofTable(rule.name()));
			rule.finds().forEach(f -> findings.add(f.toLowerCase(java.util.Locale.ROOT).replace('_', ' ')));
		});
	}

	/** @return a rule's name; that of its table for a row of one */
	private static String ofTable(String name) {
		return name.startsWith("table ") ? name.replaceFirst(", row \\d+$", "") : name;
	}

	/** @return a warning for every name in {@code jobs} that none of {@code rules} has or finds */
	public static List<Problem> check(Collection<JobCase> jobs, Collection<Rule> rules) {
		ExpectedNames names = new ExpectedNames(rules);
		for (JobCase job : jobs) {
			job.expected().values().stream().filter(DecidedBy.class::isInstance).map(DecidedBy.class::cast).forEach(d -> names.rule(d.rule(), d.at()));
			job.items().forEach(names::item);
		}
		return names.problems;
	}

	private void item(ExpectedItem item) {
		if (item instanceof ExpectedCheck check && check.byRule()) {
			rule(check.words(), check.at());
		} else if (item instanceof ExpectedFinding finding && !finding.other() && !finding.name().equals(ExpectedItem.ANY)) {
			missing(finding.name(), findings, "No rule finds " + Misfit.quoted(finding.name()) + ".", finding.at());
		}
	}

	private void rule(String name, Position at) {
		missing(name, rules, "There is no rule or table called " + Misfit.quoted(name) + ".", at);
	}

	private void missing(String name, Set<String> known, String what, Position at) {
		if (!known.contains(name)) {
			Optional<String> near = Nearest.to(name, known);
			problems.add(Problem.warning(at, what, near.map(n -> "Write \"" + n + "\".").orElse("Correct the name, or take the expectation out.")));
		}
	}
}
