package org.setwright.workbench.cases;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.setwright.check.report.Telling;
import org.setwright.workbench.look.Spoken;

/** What is expected beside what came, and below both why it came to that. */
final class DifferencePane {
	private final Text expected;
	private final Text came;
	private final Text reasons;

	DifferencePane(Composite parent) {
		Composite pane = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(8, 3).applyTo(pane);
		new Label(pane, SWT.NONE).setText(Messages.DifferencePane_expected);
		new Label(pane, SWT.NONE).setText(Messages.DifferencePane_came);
		expected = text(pane, Messages.DifferencePane_expected, SWT.SINGLE);
		came = text(pane, Messages.DifferencePane_came, SWT.SINGLE);
		reasons = text(pane, Messages.DifferencePane_reasons, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(reasons);
	}

	private static Text text(Composite pane, String name, int style) {
		Text text = new Text(pane, style | SWT.READ_ONLY | SWT.BORDER);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		Spoken.as(text, name);
		return text;
	}

	/** @param line what is picked; empty for nothing */
	void show(Optional<CaseLine> line) {
		Optional<CaseLine.OfPoint> of = line.filter(CaseLine.OfPoint.class::isInstance).map(CaseLine.OfPoint.class::cast);
		expected.setText(of.map(o -> o.point().expected()).orElse("")); //$NON-NLS-1$
		came.setText(of.map(o -> o.point().came()).orElse("")); //$NON-NLS-1$
		String why = of.map(o -> Telling.text(o.point(), o.checked().job())).orElse(""); //$NON-NLS-1$
		reasons.setText(of.isEmpty() ? Messages.DifferencePane_pick : why.isEmpty() ? Messages.DifferencePane_nothing : why);
	}
}
