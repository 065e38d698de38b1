package org.setwright.workbench.setup;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Caution;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Spoken;

/** The cautions of a job, most serious first, each with its sign, its kind in words and a way to its rule. */
final class CautionList {
	private static final int LEAST_ROOM = 70;
	private static final int SHARE_OF_VIEW = 4;
	private final ScrolledComposite scrolled;
	private final Composite lines;
	private final Consumer<Rule> openRule;
	private List<Caution> shown = List.of();

	CautionList(Composite parent, Consumer<Rule> openRule) {
		this.openRule = openRule;
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.BORDER);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		lines = new Composite(scrolled, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(8, 5).applyTo(lines);
		scrolled.setContent(lines);
		Spoken.as(lines, Messages.CautionList_name);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(scrolled);
		scrolled.addListener(SWT.Resize, e -> fit());
	}

	void show(List<Caution> cautions) {
		if (!cautions.equals(shown)) {
			shown = cautions;
			for (Control old : lines.getChildren()) {
				old.dispose();
			}
			cautions.forEach(this::line);
			lines.setBackground(Palette.now().colour(Palette.Ink.BAND_GROUND));
			lines.setBackgroundMode(SWT.INHERIT_FORCE);
			scrolled.setVisible(!cautions.isEmpty());
			((GridData) scrolled.getLayoutData()).exclude = cautions.isEmpty();
			fit();
			scrolled.getParent().layout();
			fit();
		}
	}

	private void line(Caution caution) {
		Label sign = new Label(lines, SWT.NONE);
		sign.setImage(Icon.of(caution.kind()).image());
		sign.setToolTipText(caution.kind().meaning());
		GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).indent(0, 1).applyTo(sign);
		Link text = new Link(lines, SWT.WRAP);
		text.setText(caution.kind().label().toUpperCase(Locale.ROOT) + "  " + plain(caution.sentence()) + "  <a>" //$NON-NLS-1$ //$NON-NLS-2$
				+ Messages.CautionList_rule + "</a>"); //$NON-NLS-1$
		Rule rule = caution.raisedBy().get(0).rule();
		text.setToolTipText(rule.name() + "\n" + rule.because()); //$NON-NLS-1$
		text.addListener(SWT.Selection, e -> openRule.accept(rule));
		GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(text);
	}

	private static String plain(String sentence) {
		return sentence.replace("&", "&&").replace("<", "\u2039").replace(">", "\u203a"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
	}

	private void fit() {
		int width = scrolled.getClientArea().width;
		int height = lines.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT).y;
		scrolled.setMinHeight(height);
		int hint = Math.min(height, Math.max(LEAST_ROOM, scrolled.getParent().getSize().y / SHARE_OF_VIEW));
		GridData data = (GridData) scrolled.getLayoutData();
		if (data.heightHint != hint) {
			data.heightHint = hint;
			scrolled.getDisplay().asyncExec(() -> {
				if (!scrolled.isDisposed()) {
					scrolled.getParent().layout();
				}
			});
		}
	}
}
