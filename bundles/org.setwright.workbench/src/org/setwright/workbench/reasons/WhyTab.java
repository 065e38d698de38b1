package org.setwright.workbench.reasons;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.workbench.desk.DeskState;

/** Why this value? From the setting to its rules, and from them to the answers of the job. */
final class WhyTab implements Tab {
	private final OutlinePane pane;

	WhyTab(Composite parent, Consumer<ReasonNode.Place> opened) {
		pane = new OutlinePane(parent, Messages.ReasonsView_outline, opened);
	}

	@Override
	public String title() {
		return Messages.WhyTab_title;
	}

	@Override
	public Control control() {
		return pane.control();
	}

	@Override
	public void show(DeskState now) {
		Optional<ReasonNode> root = now.settingOutcome().map(ReasonTree::of);
		pane.show(root.stream().toList(), root.map(WhyTab::first), otherwise(now));
	}

	/** What is read first: the rule that decides, or why nothing is decided. */
	private static ReasonNode first(ReasonNode root) {
		return root.sign() == ReasonNode.Sign.SETTLED ? root.children().get(0) : root;
	}

	/** @return why there are no reasons to show */
	static String otherwise(DeskState now) {
		if (now.outcome().isEmpty()) {
			return Messages.ReasonsView_noSetup;
		}
		return now.setting().isEmpty() ? Messages.ReasonsView_pickSetting : Messages.ReasonsView_notNeeded;
	}

	TreeViewer viewer() {
		return pane.viewer();
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
