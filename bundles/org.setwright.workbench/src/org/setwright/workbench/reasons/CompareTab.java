package org.setwright.workbench.reasons;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.JobCase;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.look.Spoken;

/** Why is it otherwise on another job? The settings that differ, and the first rules and answers where the two part. */
final class CompareTab implements Tab {
	private static final int LINES = 20;
	private final Composite area;
	private final Combo other;
	private final OutlinePane pane;
	private List<JobCase> jobs = List.of();

	CompareTab(Composite parent, Desk desk, Consumer<ReasonNode.Place> opened) {
		area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).numColumns(2).applyTo(area);
		new Label(area, SWT.NONE).setText(Messages.CompareTab_with);
		other = new Combo(area, SWT.DROP_DOWN | SWT.READ_ONLY);
		other.setVisibleItemCount(LINES);
		other.addListener(SWT.Selection, e -> show(desk.state()));
		Spoken.as(other, Messages.CompareTab_other);
		GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).applyTo(other);
		pane = new OutlinePane(area, Messages.CompareTab_outline, opened);
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(pane.control());
	}

	@Override
	public String title() {
		return Messages.CompareTab_title;
	}

	@Override
	public Control control() {
		return area;
	}

	@Override
	public void show(DeskState now) {
		List<JobCase> others = now.latest().map(e -> e.book().jobs()).orElse(List.of()).stream()
				.filter(j -> !now.job().equals(Optional.of(j.path()))).toList();
		if (!others.equals(jobs)) {
			Optional<String> kept = picked().map(JobCase::path);
			jobs = others;
			other.setItems(others.stream().map(JobCase::name).toArray(String[]::new));
			others.stream().filter(j -> kept.equals(Optional.of(j.path()))).findFirst().ifPresent(j -> other.select(others.indexOf(j)));
		}
		List<ReasonNode> roots = now.inquiry().flatMap(here -> picked().flatMap(j -> now.edition().map(e -> CompareTree.of(here, e.about(j.job()),
				now.setting())))).orElse(List.of());
		pane.show(roots, roots.stream().findFirst(), now.inquiry().isEmpty() ? Messages.ReasonsView_noSetup : Messages.CompareTab_pick);
	}

	private Optional<JobCase> picked() {
		return other.getSelectionIndex() < 0 ? Optional.empty() : Optional.of(jobs.get(other.getSelectionIndex()));
	}

	@Override
	public String text() {
		return pane.text();
	}

	@Override
	public void setFocus() {
		other.setFocus();
	}
}
