package org.setwright.workbench.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.since.Origin;
import org.setwright.editions.since.Since;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** Since which editions a job comes to a value, and by which changes. */
final class SinceRows {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.SinceRows_since, 22),
			new RowTree.Column(Messages.SinceRows_before, 18), new RowTree.Column(Messages.SinceRows_by, 34),
			new RowTree.Column(Messages.SinceRows_message, 26));

	private SinceRows() {
	}

	/** @return lines about a {@link Kept} each, then one about nothing where editions were passed over */
	static List<Row> of(Since since) {
		List<Row> rows = new ArrayList<>();
		since.origins().forEach(o -> rows.add(row(o)));
		if (!since.passedOver().isEmpty()) {
			String passed = since.passedOver().stream().map(Kept::shown).collect(Collectors.joining("; ")); //$NON-NLS-1$
			rows.add(Row.heading(Icon.NOTE, NLS.bind(Messages.SinceRows_passedOver, passed), List.of()));
		}
		return rows;
	}

	private static Row row(Origin origin) {
		Optional<Kept> before = origin.before();
		return new Row(Icon.BOOK, List.of(EditionLine.WHEN.format(origin.edition().on()) + ", " + origin.edition().by().name(), //$NON-NLS-1$
				before.isPresent() ? origin.valueBefore() : Messages.SinceRows_first, before.isPresent() ? ImpactRows.causes(origin.causes()) : "", //$NON-NLS-1$
				AnswerRows.why(origin.edition())), origin.edition());
	}
}
