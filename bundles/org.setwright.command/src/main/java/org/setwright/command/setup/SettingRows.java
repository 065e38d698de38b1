package org.setwright.command.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.check.cases.SettingPoint;
import org.setwright.command.answer.Standing;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;

/** Results as CSV: one row for each proposal, and one for each setting that nothing proposes. */
final class SettingRows {
	private static final List<String> HEADER = List.of("job", "path", "setting", "label", "state", "need", "standing",
			"value", "rule", "authority", "because", "source", "at", "expected", "met");

	private SettingRows() {
	}

	static List<List<String>> of(List<JobResult> results) {
		List<List<String>> rows = new ArrayList<>();
		rows.add(HEADER);
		for (JobResult result : results) {
			Map<Setting, SettingPoint> expectations = result.expectations().stream().filter(SettingPoint.class::isInstance)
					.map(SettingPoint.class::cast).collect(Collectors.toMap(SettingPoint::setting, e -> e));
			for (SettingOutcome outcome : result.outcome().settings()) {
				Optional<SettingPoint> expected = Optional.ofNullable(expectations.remove(outcome.setting()));
				outcome.proposals().forEach(p -> rows.add(proposed(result, outcome, p, expected)));
				if (outcome.proposals().isEmpty()) {
					rows.add(row(result, outcome.setting(), JobJson.word(outcome.state()), JobJson.word(outcome.need()),
							List.of("", "", "", "", "", "", ""), expected));
				}
			}
			expectations.values().forEach(e -> rows.add(row(result, e.setting(), "not needed", "not needed",
					List.of("", "", "", "", "", "", ""), Optional.of(e))));
		}
		return rows;
	}

	private static List<String> proposed(JobResult result, SettingOutcome outcome, Proposal proposal, Optional<SettingPoint> expected) {
		Rule rule = proposal.rule();
		return row(result, outcome.setting(), JobJson.word(outcome.state()), JobJson.word(outcome.need()),
				List.of(Standing.of(proposal, outcome).word(), proposal.value().text(), rule.name(), rule.authority().label(),
						rule.because(), rule.source(), rule.at().toString()),
				expected);
	}

	private static List<String> row(JobResult result, Setting setting, String state, String need, List<String> proposal,
			Optional<SettingPoint> expected) {
		List<String> row = new ArrayList<>(List.of(result.jobCase().name(), result.jobCase().path(), setting.id(), setting.label(), state, need));
		row.addAll(proposal);
		row.add(expected.map(e -> e.expected()).orElse(""));
		row.add(expected.map(e -> e.met() ? "yes" : "no").orElse(""));
		return row;
	}
}
