package org.setwright.workbench.editions;

import java.util.List;
import java.util.Optional;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remark;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** What was remarked: a line for each matter, and below it what was said, oldest first. */
final class MatterRows {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.MatterRows_remark, 52),
			new RowTree.Column(Messages.MatterRows_stands, 14), new RowTree.Column(Messages.MatterRows_by, 16),
			new RowTree.Column(Messages.MatterRows_when, 18));

	private MatterRows() {
	}

	/** @return lines about a {@link Matter} each, those that are open first */
	static List<Row> of(List<Matter> matters) {
		return matters.stream().sorted((a, b) -> Boolean.compare(b.open(), a.open())).map(MatterRows::row).toList();
	}

	private static Row row(Matter matter) {
		List<Row> said = matter.remarks().stream().map(r -> remark(matter, r)).toList();
		return new Row(matter.open() ? Icon.HELD_OPEN : Icon.SETTLED,
				List.of(matter.about().words(), (matter.open() ? Remark.Stand.OPEN : Remark.Stand.SETTLED).words()), Optional.of(matter), said);
	}

	private static Row remark(Matter matter, Remark remark) {
		return new Row(Icon.NOTE, List.of(remark.text(), remark.stand().words(), remark.by().name(), EditionLine.WHEN.format(remark.on())), matter);
	}
}
