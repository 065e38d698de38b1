package org.setwright.workbench.reasons;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.engine.Inquiry;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;

/** Why not? What became of a rule, or of every rule that could have given another value. */
final class WhyNotTab implements Tab {
	private final Composite area;
	private final QuestionRow row;
	private final OutlinePane pane;

	WhyNotTab(Composite parent, Desk desk, Consumer<ReasonNode.Place> opened) {
		area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(area);
		row = new QuestionRow(area, desk::pickRule, () -> show(desk.state()));
		pane = new OutlinePane(area, Messages.WhyNotTab_outline, opened);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(pane.control());
	}

	@Override
	public String title() {
		return Messages.WhyNotTab_title;
	}

	@Override
	public Control control() {
		return area;
	}

	@Override
	public void show(DeskState now) {
		row.follow(now);
		Optional<Inquiry> inquiry = now.inquiry();
		List<ReasonNode> roots = inquiry.flatMap(i -> row.question().map(q -> WhyNotTree.of(q, i))).orElse(List.of());
		pane.show(roots, roots.stream().findFirst(), inquiry.isEmpty() ? Messages.ReasonsView_noSetup : String.join("", row.missing())); //$NON-NLS-1$
	}

	/** @return what is asked now */
	Optional<Question> question(DeskState now) {
		row.follow(now);
		return row.question();
	}

	@Override
	public String text() {
		return pane.text();
	}

	@Override
	public void setFocus() {
		row.setFocus();
	}
}
