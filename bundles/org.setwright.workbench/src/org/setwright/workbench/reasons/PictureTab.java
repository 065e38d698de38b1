package org.setwright.workbench.reasons;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.picture.Derivation;
import org.setwright.picture.Node;
import org.setwright.workbench.desk.DeskState;

/** What rests on what? The reasons of the setting as a picture, from the job on the left to the setting on the right. */
final class PictureTab implements Tab {
	private final PictureCanvas canvas;
	private Optional<SettingOutcome> shown = Optional.empty();

	PictureTab(Composite parent, Consumer<ReasonNode.Place> opened) {
		canvas = new PictureCanvas(parent, node -> place(node).ifPresent(opened));
	}

	private static Optional<ReasonNode.Place> place(Node node) {
		return node.field().<ReasonNode.Place>map(ReasonNode.InJob::new).or(() -> node.at().map(ReasonNode.InRules::new));
	}

	@Override
	public String title() {
		return Messages.PictureTab_title;
	}

	@Override
	public Control control() {
		return canvas.control();
	}

	@Override
	public void show(DeskState now) {
		if (!shown.equals(now.settingOutcome()) || shown.isEmpty()) {
			shown = now.settingOutcome();
			canvas.show(shown.map(Derivation::of), WhyTab.otherwise(now));
		}
	}

	@Override
	public String text() {
		return canvas.text();
	}

	@Override
	public void setFocus() {
		canvas.setFocus();
	}
}
