package org.setwright.workbench.fitness;

import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.check.coverage.ConditionCoverage;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.coverage.RuleCoverage;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** What the saved jobs make of every rule and row of a table, and of each of its conditions. */
final class RuleLines {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.RuleLines_rule, 40, 190),
			new RowTree.Column(Messages.RuleLines_standing, 24, 170),
			new RowTree.Column(Messages.RuleLines_spoke, 5), new RowTree.Column(Messages.RuleLines_decided, 5), new RowTree.Column(Messages.RuleLines_outranked, 5),
			new RowTree.Column(Messages.RuleLines_silent, 5), new RowTree.Column(Messages.RuleLines_open, 5), new RowTree.Column(Messages.RuleLines_where, 16, 90));

	private RuleLines() {
	}

	static List<Row> of(Coverage coverage) {
		return coverage.rules().stream().map(RuleLines::line).toList();
	}

	private static Row line(RuleCoverage of) {
		long oneWay = of.conditions().stream().filter(c -> !c.bothWays()).count();
		boolean lacking = of.decided().isEmpty() || oneWay > 0;
		String standing = of.spoke() == 0 ? Messages.RuleLines_neverSpoke : of.decided().isEmpty() ? Messages.RuleLines_neverDecided
				: oneWay > 0 ? NLS.bind(Messages.RuleLines_oneWay, oneWay, of.conditions().size()) : Messages.RuleLines_triedOut;
		Icon sign = of.spoke() == 0 ? Icon.GAP : lacking ? Icon.PARTLY_KNOWN : Icon.AS_EXPECTED;
		return new Row(sign, List.of(of.rule().name(), standing, count(of.spoke()), count(of.decided().size()), count(of.outranked().size()), count(of.silent()),
				count(of.heldOpen().size()), of.rule().at().toString()), lacking, Optional.of(of.rule()), of.conditions().stream().map(RuleLines::line).toList());
	}

	private static Row line(ConditionCoverage of) {
		String standing = of.bothWays() ? Messages.RuleLines_bothWays : of.held() > 0 ? Messages.RuleLines_neverFailed
				: of.failed() > 0 ? Messages.RuleLines_neverHeld : Messages.RuleLines_neverSeen;
		return new Row(of.bothWays() ? Icon.AS_EXPECTED : Icon.PARTLY_KNOWN, List.of(of.words(), standing, count(of.held()), "", "", count(of.failed()), "", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				of.at().toString()), !of.bothWays(), Optional.of(of.at()), List.of());
	}

	private static String count(int number) {
		return Integer.toString(number);
	}
}
