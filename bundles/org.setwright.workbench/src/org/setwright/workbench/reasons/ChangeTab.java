package org.setwright.workbench.reasons;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.setwright.engine.outcome.Outcome;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.look.Spoken;

/** What would change it? The smallest changes by which it would be otherwise, and the answers to check first. */
final class ChangeTab implements Tab {
	private final Composite area;
	private final Label doing;
	private final Button stop;
	private final OutlinePane pane;
	private final Function<DeskState, Optional<Question>> asked;
	private Optional<ChangeSearch> search = Optional.empty();
	private Asked shown = new Asked(Optional.empty(), Optional.empty());

	/** What the answer shown is an answer to. */
	private record Asked(Optional<Outcome> outcome, Optional<Question> question) {
	}

	/** @param asked what is asked in the tab before */
	ChangeTab(Composite parent, Function<DeskState, Optional<Question>> asked, Consumer<ReasonNode.Place> opened) {
		this.asked = asked;
		area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).numColumns(2).applyTo(area);
		doing = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(doing);
		stop = new Button(area, SWT.PUSH);
		stop.setText(Messages.ChangeTab_stop);
		stop.setEnabled(false);
		stop.addListener(SWT.Selection, e -> search.ifPresent(ChangeSearch::cancel));
		Spoken.as(stop, Messages.ChangeTab_stop);
		pane = new OutlinePane(area, Messages.ChangeTab_outline, opened);
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(pane.control());
		area.addDisposeListener(e -> search.ifPresent(ChangeSearch::cancel));
	}

	@Override
	public String title() {
		return Messages.ChangeTab_title;
	}

	@Override
	public Control control() {
		return area;
	}

	@Override
	public void show(DeskState now) {
		Asked next = new Asked(now.outcome(), asked.apply(now));
		if (next.equals(shown)) {
			return;
		}
		shown = next;
		search.ifPresent(ChangeSearch::cancel);
		search = now.inquiry().map(i -> new ChangeSearch(i, next.question, (roots, words) -> answered(next, roots, words)));
		pane.show(List.of(), Optional.empty(), search.isEmpty() ? Messages.ReasonsView_noSetup : ""); //$NON-NLS-1$
		stop.setEnabled(search.isPresent());
		search.ifPresent(ChangeSearch::schedule);
	}

	private void answered(Asked question, List<ReasonNode> roots, String words) {
		if (!area.isDisposed() && question == shown) {
			doing.setText(words.isEmpty() && question.question.isEmpty() ? Messages.ChangeTab_noQuestion : words);
			stop.setEnabled(!words.isEmpty());
			if (!roots.isEmpty() || words.isEmpty()) {
				pane.show(roots, roots.stream().findFirst(), ""); //$NON-NLS-1$
			}
		}
	}

	@Override
	public String text() {
		return pane.text();
	}

	@Override
	public void setFocus() {
		pane.viewer().getControl().setFocus();
	}
}
