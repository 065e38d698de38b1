package org.setwright.workbench.jobform;

import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.workbench.look.Spoken;

/** Chooses in which units the form shows quantities; remembered for every job. The job's file keeps what somebody wrote. */
final class ShownUnits {
	private static final String NODE = "org.setwright.workbench"; //$NON-NLS-1$
	private static final String KEY = "jobform.units"; //$NON-NLS-1$
	private static final List<UnitSystem> ORDER = List.of(UnitSystem.BOTH, UnitSystem.IP, UnitSystem.SI);
	private final Combo combo;

	/** @param changed told after another choice */
	ShownUnits(Composite parent, Runnable changed) {
		Composite line = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(line);
		GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(line);
		new Label(line, SWT.NONE).setText(Messages.ShownUnits_ask);
		combo = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
		combo.setItems(Messages.ShownUnits_asWritten, Messages.ShownUnits_ip, Messages.ShownUnits_si);
		combo.select(ORDER.indexOf(remembered()));
		combo.setToolTipText(Messages.ShownUnits_explained);
		Spoken.as(combo, Messages.ShownUnits_spoken);
		combo.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		combo.addListener(SWT.Selection, e -> {
			notes().put(KEY, now().name());
			changed.run();
		});
	}

	UnitSystem now() {
		return ORDER.get(Math.max(0, combo.getSelectionIndex()));
	}

	private static UnitSystem remembered() {
		String kept = notes().get(KEY, UnitSystem.BOTH.name());
		return Arrays.stream(UnitSystem.values()).filter(u -> u.name().equals(kept)).findFirst().orElse(UnitSystem.BOTH);
	}

	private static IEclipsePreferences notes() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}
}
