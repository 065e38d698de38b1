package org.setwright.workbench.setup;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.setwright.book.JobCase;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.uses.Pointed;
import org.setwright.workbench.uses.UseMenu;

/** What do I set on this job? Cautions on top, then the settings, then what to find out next. */
public final class SetupView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.setup"; //$NON-NLS-1$
	private static final int[] SHARES = { 70, 30 };
	private final DeskListener listener = this::deskChanged;
	private Desk desk;
	private Headline headline;
	private CautionList cautions;
	private SettingList settings;
	private FindOutList findOut;
	private Composite area;
	private boolean all;
	private Pointed pointed = Optional::empty;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		area = parent;
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(parent);
		headline = new Headline(parent);
		cautions = new CautionList(parent, this::openRule);
		SashForm sash = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		settings = new SettingList(sash, desk::pickSetting, this::openDeciding);
		findOut = new FindOutList(sash, unknown -> desk.state().job()
				.ifPresent(job -> Places.openJob(getSite().getPage(), job, unknown)));
		sash.setWeights(SHARES);
		UseMenu.on(settings.viewer().getControl());
		UseMenu.on(findOut.viewer().getControl());
		settings.viewer().getControl().addListener(SWT.FocusIn, e -> pointed = settings::pointed);
		findOut.viewer().getControl().addListener(SWT.FocusIn, e -> pointed = findOut::pointed);
		getSite().setSelectionProvider(settings.viewer());
		getViewSite().getActionBars().getToolBarManager().add(new ShowAllAction(this::showAll));
		Repaint.with(area, () -> {
			cautions.show(List.of());
			show(desk.state());
		});
		desk.addListener(listener);
		show(desk.state());
	}

	private void showAll(boolean wanted) {
		all = wanted;
		show(desk.state());
	}

	private void openRule(Rule rule) {
		Places.open(getSite().getPage(), rule.at());
	}

	private void openDeciding(SettingRow row) {
		row.outcome().flatMap(o -> o.proposals().stream().findFirst()).ifPresent(p -> openRule(p.rule()));
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.job().equals(now.job())) {
			show(now);
		} else if (!before.setting().equals(now.setting())) {
			settings.pick(now.setting());
		}
	}

	private void show(DeskState now) {
		Optional<JobCase> job = now.jobCase();
		Optional<Outcome> outcome = now.lastOutcome();
		headline.show(now);
		cautions.show(outcome.map(Outcome::cautions).orElse(List.of()));
		settings.show(outcome.flatMap(o -> job.map(j -> SettingRows.of(now.catalogue(), o, now.savedOutcome(), j, all)))
				.orElse(List.of()));
		settings.pick(now.setting());
		findOut.show(outcome.map(Outcome::toFindOut));
		area.layout();
	}

	@Override
	public <T> T getAdapter(Class<T> wanted) {
		return wanted == Pointed.class ? wanted.cast((Pointed) () -> pointed.pointed()) : super.getAdapter(wanted);
	}

	@Override
	public void setFocus() {
		settings.viewer().getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
