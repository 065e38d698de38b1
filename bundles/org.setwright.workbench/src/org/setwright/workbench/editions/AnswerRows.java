package org.setwright.workbench.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.lineage.Answer;
import org.setwright.editions.lineage.RuleStep;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** Every edition that made or changed a rule, newest first: who, what and why. */
final class AnswerRows {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.AnswerRows_when, 20),
			new RowTree.Column(Messages.AnswerRows_who, 16), new RowTree.Column(Messages.AnswerRows_what, 26),
			new RowTree.Column(Messages.AnswerRows_why, 38));

	private AnswerRows() {
	}

	/** @return lines about a {@link RuleStep} each; one about nothing for what is not kept */
	static List<Row> of(Answer answer) {
		List<Row> rows = new ArrayList<>();
		answer.inHand().map(c -> List.of(Messages.AnswerRows_inHand, "", c.what(), Messages.AnswerRows_notKept)) //$NON-NLS-1$
				.ifPresent(cells -> rows.add(new Row(Icon.WRITE, cells, Optional.empty(), List.of())));
		answer.steps().forEach(s -> rows.add(row(s)));
		return rows;
	}

	private static Row row(RuleStep step) {
		return new Row(ChangeRows.sign(step.change()), List.of(EditionLine.WHEN.format(step.edition().on()), step.edition().by().name(),
				step.change().what(), why(step.edition())), step);
	}

	/** @return the whole message */
	static String why(Kept edition) {
		return edition.reason().isEmpty() ? edition.title() : edition.title() + "\n" + edition.reason(); //$NON-NLS-1$
	}
}
