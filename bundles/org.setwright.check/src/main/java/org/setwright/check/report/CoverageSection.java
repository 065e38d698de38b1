package org.setwright.check.report;

import java.util.List;
import org.setwright.check.coverage.ConditionCoverage;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.coverage.RuleCoverage;
import org.setwright.check.coverage.SettingCoverage;
import org.setwright.check.fitness.Reached;

/** In the report: what the jobs try out of the book, and what they do not. @param reached what is reached, beside what is demanded */
public record CoverageSection(Coverage coverage, List<Reached> reached) implements Section {
	public CoverageSection {
		reached = List.copyOf(reached);
	}

	@Override
	public String title() {
		return "Coverage";
	}

	@Override
	public List<Figure> figures() {
		return reached.stream().map(r -> new Figure(Reached.percent(r.share()), r.figure().words(), !r.enough())).toList();
	}

	@Override
	public void write(Markup html) {
		reached.forEach(r -> html.element("p", r.sentence() + (r.enough() ? "." : ": too little."), "class", r.enough() ? "good" : "bad").line());
		rules(html, "No job lets these rules speak", coverage.rules().stream().filter(r -> r.spoke() == 0).toList());
		rules(html, "These rules spoke, and never decided anything", coverage.rules().stream().filter(r -> r.spoke() > 0 && r.decided().isEmpty()).toList());
		List<RuleCoverage> oneWay = coverage.rules().stream().filter(r -> r.spoke() > 0 && !r.conditions().stream().allMatch(ConditionCoverage::bothWays)).toList();
		if (!oneWay.isEmpty()) {
			html.element("h3", "Conditions seen one way only").line();
			Tables.begin(html, "rule", "condition", "held on", "failed on");
			oneWay.forEach(rule -> rule.conditions().stream().filter(c -> !c.bothWays()).forEach(c -> condition(html, rule, c)));
			Tables.end(html);
		}
		List<SettingCoverage> never = coverage.settings().stream().filter(s -> !s.never().isEmpty()).toList();
		if (!never.isEmpty()) {
			html.element("h3", "Values no job comes to").line();
			Tables.begin(html, "setting", "never");
			never.forEach(s -> Tables.row(html, s.setting().label(), String.join(", ", s.never())));
			Tables.end(html);
		}
	}

	private static void rules(Markup html, String title, List<RuleCoverage> rules) {
		if (!rules.isEmpty()) {
			html.element("h3", title).line();
			Tables.begin(html, "rule", "where");
			rules.forEach(r -> Tables.row(html, r.rule().name(), r.rule().at().toString()));
			Tables.end(html);
		}
	}

	private static void condition(Markup html, RuleCoverage rule, ConditionCoverage condition) {
		Tables.row(html, rule.rule().name(), condition.words(), jobs(condition.held()), jobs(condition.failed()));
	}

	private static String jobs(int count) {
		return count == 0 ? "never" : count == 1 ? "1 job" : count + " jobs";
	}
}
