package org.setwright.workbench.startup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;

/** What do I prove when I start this job's equipment? The checks in order, and below them why the one picked is there. */
public final class StartUpView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.startup"; //$NON-NLS-1$
	private static final String UNITS = "units"; //$NON-NLS-1$
	private static final int[] SHARES = { 76, 24 };
	private final DeskListener listener = this::deskChanged;
	private UnitSystem units = UnitSystem.BOTH;
	private Desk desk;
	private Label name;
	private CheckSheet sheet;
	private Text reasons;

	@Override
	public void init(IViewSite site, IMemento memento) throws PartInitException {
		super.init(site, memento);
		String kept = memento == null ? null : memento.getString(UNITS);
		units = Arrays.stream(UnitSystem.values()).filter(u -> u.name().equals(kept)).findFirst().orElse(UnitSystem.BOTH);
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putString(UNITS, units.name());
	}

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(parent);
		name = new Label(parent, SWT.NONE);
		Type.heading(name, 3);
		Type.ink(name, Palette.Ink.HEADING);
		GridDataFactory.fillDefaults().grab(true, false).indent(2, 0).applyTo(name);
		SashForm sash = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		sheet = new CheckSheet(sash, this::picked, this::openRule);
		reasons = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		Spoken.as(reasons, Messages.StartUpView_reasons);
		sash.setWeights(SHARES);
		menus();
		Repaint.with(parent, sheet::paint);
		desk.addListener(listener);
		show(desk.state(), false);
	}

	private void menus() {
		IMenuManager menu = getViewSite().getActionBars().getMenuManager();
		for (UnitSystem each : UnitSystem.values()) {
			UnitsAction action = new UnitsAction(each, this::chosen);
			action.setChecked(each == units);
			menu.add(action);
		}
		MenuManager popup = new MenuManager();
		popup.add(openRule());
		menu.add(new Separator());
		menu.add(openRule());
		sheet.control().setMenu(popup.createContextMenu(sheet.control()));
	}

	private Action openRule() {
		return new Action(Messages.StartUpView_openRule) {
			@Override
			public void run() {
				sheet.picked().ifPresent(StartUpView.this::openRule);
			}
		};
	}

	private void chosen(UnitSystem wanted) {
		units = wanted;
		show(desk.state(), true);
	}

	private void picked(Optional<StartUpCheck> check) {
		if (reasons != null) {
			reasons.setText(check.map(CheckReasons::of).orElse(Messages.StartUpView_pickCheck));
		}
	}

	private void openRule(StartUpCheck check) {
		Places.open(getSite().getPage(), check.saidBy().get(0).at());
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.job().equals(now.job())) {
			show(now, before.job().equals(now.job()));
		}
	}

	private void show(DeskState now, boolean samePlace) {
		name.setText(now.jobCase().map(JobCase::name).orElse("").replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		sheet.show(now.outcome().map(o -> Sheet.of(o, units))
				.orElse(new Sheet(Messages.StartUpView_noSetup, List.of(), List.of())), samePlace);
	}

	@Override
	public void setFocus() {
		sheet.control().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
