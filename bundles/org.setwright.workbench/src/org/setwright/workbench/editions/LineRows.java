package org.setwright.workbench.editions;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.setwright.editions.OtherLines.Line;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.kept.Kept;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** Lines of work, those of other places as they were when last fetched. */
final class LineRows {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.LineRows_line, 24),
			new RowTree.Column(Messages.LineRows_stands, 20), new RowTree.Column(Messages.LineRows_edition, 30),
			new RowTree.Column(Messages.LineRows_message, 26));

	private LineRows() {
	}

	/** @return lines about a {@link Line} each */
	static List<Row> of(List<Line> lines) {
		return lines.stream().map(LineRows::row).toList();
	}

	private static Row row(Line line) {
		String stands = line.open() ? Messages.LineRows_open : line.elsewhere() ? Messages.LineRows_elsewhere : ""; //$NON-NLS-1$
		return new Row(line.open() ? Icon.OPEN : Icon.BOOK, List.of(line.name(), stands, line.at().map(Kept::shown).orElse(Messages.LineRows_noBook),
				line.at().map(Kept::title).orElse("")), line); //$NON-NLS-1$
	}

	/** @return what there is to decide, in words */
	static String summary(List<Conflict> conflicts, int files) {
		return conflicts.isEmpty() ? NLS.bind(Messages.LineRows_noConflict, files)
				: NLS.bind(Messages.LineRows_conflicts, conflicts.size(), conflicts.stream().map(Conflict::what).collect(Collectors.joining(", "))); //$NON-NLS-1$
	}
}
