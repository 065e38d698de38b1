package org.setwright.workbench.fitness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.coverage.SettingCoverage;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** Which values the saved jobs come to for each setting, and which they never do. */
final class SettingLines {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.SettingLines_setting, 40),
			new RowTree.Column(Messages.SettingLines_standing, 30), new RowTree.Column(Messages.SettingLines_jobs, 12), new RowTree.Column(Messages.SettingLines_open, 18));

	private SettingLines() {
	}

	static List<Row> of(Coverage coverage) {
		return coverage.settings().stream().map(SettingLines::line).toList();
	}

	private static Row line(SettingCoverage of) {
		List<Row> below = new ArrayList<>();
		of.settled().forEach((value, jobs) -> below.add(new Row(Icon.AS_EXPECTED, List.of(value, Messages.SettingLines_seen, Integer.toString(jobs)), false,
				Optional.of(of.setting()), List.of())));
		of.never().forEach(value -> below.add(new Row(Icon.GAP, List.of(value, Messages.SettingLines_never, "0"), true, Optional.of(of.setting()), List.of()))); //$NON-NLS-1$
		boolean nothing = of.settled().isEmpty();
		boolean lacking = nothing || !of.never().isEmpty();
		String standing = nothing ? Messages.SettingLines_nothing
				: of.never().isEmpty() ? NLS.bind(Messages.SettingLines_values, of.settled().size())
						: NLS.bind(Messages.SettingLines_someNever, of.never().size(), of.never().size() + of.settled().size());
		int settled = of.settled().values().stream().mapToInt(Integer::intValue).sum();
		return new Row(nothing ? Icon.GAP : lacking ? Icon.PARTLY_KNOWN : Icon.AS_EXPECTED,
				List.of(of.setting().label(), standing, Integer.toString(settled), Integer.toString(of.open())), lacking, Optional.of(of.setting()), below);
	}
}
