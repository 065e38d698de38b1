package org.setwright.workbench.aloud;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;

/** What does this rule say? The rule under the cursor, or the row of a table picked, read as somebody would say it. */
public final class ReadAloudView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.aloud"; //$NON-NLS-1$
	private final DeskListener listener = this::deskChanged;
	private Reading shown = Reading.NONE;
	private Desk desk;
	private Label title;
	private Text text;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(parent);
		title = new Label(parent, SWT.WRAP);
		Type.heading(title, 1);
		Type.ink(title, Palette.Ink.HEADING);
		GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).indent(2, 0).applyTo(title);
		text = new Text(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		Type.larger(text, 1);
		Spoken.as(text, Messages.ReadAloudView_text);
		GridDataFactory.fillDefaults().grab(true, true).hint(60, 40).applyTo(text);
		desk.addListener(listener);
		show(desk.state());
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.rule().equals(now.rule())) {
			show(now);
		}
	}

	private void show(DeskState now) {
		shown = Reading.of(now, shown);
		title.setText(shown.title().replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		text.setText(shown.text());
		title.getParent().layout();
	}

	@Override
	public void setFocus() {
		text.setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
