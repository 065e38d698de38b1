package org.setwright.workbench.landing;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.setwright.landing.LandingPlan;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.wiring.Wire;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;

/** Which conductor goes where on this job? The list says it, and below stands why. */
public final class LandingView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.landing"; //$NON-NLS-1$
	private static final int[] SHARES = { 68, 32 };
	private final DeskListener listener = this::deskChanged;
	private Desk desk;
	private Label name;
	private Label summary;
	private LandingList list;
	private Text detail;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(parent);
		name = new Label(parent, SWT.NONE);
		Type.heading(name, 3);
		Type.ink(name, Palette.Ink.HEADING);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(name);
		summary = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(summary);
		SashForm sash = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		list = new LandingList(sash, this::picked, this::openWire);
		detail = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		Spoken.as(detail, Messages.LandingView_detail);
		sash.setWeights(SHARES);
		getSite().setSelectionProvider(list.viewer());
		Repaint.with(sash, () -> show(desk.state()));
		desk.addListener(listener);
		show(desk.state());
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.job().equals(now.job())) {
			show(now);
		}
	}

	private void show(DeskState now) {
		Optional<LandingPlan> plan = now.outcome().map(LandingPlan::of);
		name.setText(now.jobCase().map(j -> j.name()).orElse("").replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		summary.setText(plan.map(LandingView::counts).orElseGet(() -> now.job().isEmpty() ? Messages.LandingView_pickJob : Messages.LandingView_noSetup));
		list.show(plan.map(LandingRows::of).orElse(List.of()));
		picked(list.row());
		summary.getParent().layout();
	}

	/** @return for example "6 to be landed, 2 of them after checking; 1 without a conductor; 1 not landed" */
	static String counts(LandingPlan plan) {
		if (!plan.stops().isEmpty()) {
			return Messages.LandingView_noPlan;
		}
		long unsure = plan.landings().stream().filter(l -> !l.isSure()).count();
		return NLS.bind(Messages.LandingView_counts, new Object[] { plan.landings().size(), unsure, plan.unserved().size(), plan.unused().size() });
	}

	private void picked(Optional<LandingRow> row) {
		detail.setText(row.map(LandingRow::detail).orElse("")); //$NON-NLS-1$
	}

	private void openWire(LandingRow row) {
		FactKind wire = desk.state().catalogue().kind(Wire.class);
		row.wire().ifPresent(item -> desk.state().job()
				.ifPresent(job -> Places.openJob(getSite().getPage(), job, JobField.of(wire, item, wire.field("colour").orElseThrow())))); //$NON-NLS-1$
	}

	@Override
	public void setFocus() {
		list.viewer().getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
