package org.setwright.workbench.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.editions.impact.Cause;
import org.setwright.editions.impact.Difference;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.impact.JobImpact;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** What changes mean for the saved jobs: which of them come to something else, and which change is responsible. */
final class ImpactRows {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.ImpactRows_job, 32),
			new RowTree.Column(Messages.ImpactRows_before, 17), new RowTree.Column(Messages.ImpactRows_after, 17),
			new RowTree.Column(Messages.ImpactRows_causes, 34));

	private ImpactRows() {
	}

	/** Where a line leads. @param job its path below the book @param setting empty for the job as a whole */
	record Spot(String job, Optional<Setting> setting) {
	}

	/** @return lines about a {@link Spot} each */
	static List<Row> of(Impact impact) {
		return impact.jobs().stream().map(ImpactRows::job).toList();
	}

	private static Row job(JobImpact of) {
		List<Row> below = new ArrayList<>();
		of.differences().forEach(d -> below.add(difference(of, d)));
		List<String> cells = List.of(of.job().name(), "", of.standing().words(), of.fault()); //$NON-NLS-1$
		return new Row(of.fault().isEmpty() ? Icon.JOB : Icon.DOES_NOT_RUN, cells, Optional.of(new Spot(of.job().path(), Optional.empty())), below);
	}

	private static Row difference(JobImpact of, Difference difference) {
		return new Row(Icon.WRITE, List.of(difference.point().words(), difference.before(), difference.after(), causes(difference.causes())),
				new Spot(of.job().path(), difference.point().setting()));
	}

	/** @return what is responsible, in words; each of several would do it alone */
	static String causes(List<Cause> causes) {
		return causes.isEmpty() ? Messages.ImpactRows_notFound : causes.stream().map(Cause::shown).collect(Collectors.joining(Messages.ImpactRows_or));
	}
}
