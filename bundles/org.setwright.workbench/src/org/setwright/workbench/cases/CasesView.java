package org.setwright.workbench.cases;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.cases.Standing;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;

/** Is the book fit to go out? Every job against what it expects, as of the last key; what differs, and why. */
public final class CasesView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.cases"; //$NON-NLS-1$
	private static final int[] SHARES = { 68, 32 };
	private static final int BETWEEN_TICKS = 14;
	private final DeskListener listener = new Follower();
	private final Map<Standing, Button> shown = new EnumMap<>(Standing.class);
	private Desk desk;
	private CaseList list;
	private DifferencePane difference;
	private AcceptAction accept;
	private Action runAll;
	private Action runPicked;
	private Action stop;
	private Button changedOnly;
	private boolean stopped;
	private CaseCheck check = new CaseCheck(List.of());

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(parent);
		filters(parent);
		SashForm sash = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		list = new CaseList(sash);
		difference = new DifferencePane(sash);
		sash.setWeights(SHARES);
		actions();
		list.viewer().addPostSelectionChangedListener(e -> picked());
		list.viewer().addOpenListener(e -> list.picked().stream().findFirst().ifPresent(this::open));
		getSite().setSelectionProvider(list.viewer());
		Repaint.with(parent, list.viewer()::refresh);
		desk.addListener(listener);
		show(desk.state());
	}

	private void filters(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(row);
		Text search = new Text(row, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		search.setMessage(Messages.CasesView_search);
		Spoken.as(search, Messages.CasesView_search);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		search.addListener(SWT.Modify, e -> list.filter(list.filter().searching(search.getText())));
		Composite ticks = new Composite(row, SWT.NONE);
		RowLayout wrapping = new RowLayout(SWT.HORIZONTAL);
		wrapping.spacing = BETWEEN_TICKS;
		ticks.setLayout(wrapping);
		GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(ticks);
		for (Standing standing : List.of(Standing.NOT_MET, Standing.MET, Standing.NOT_ASKED)) {
			Button button = new Button(ticks, SWT.CHECK);
			button.setText(CaseColumns.word(standing));
			button.setSelection(CaseFilter.AT_FIRST.standings().contains(standing));
			button.addListener(SWT.Selection, e -> list.filter(list.filter().with(standing, button.getSelection())));
			shown.put(standing, button);
		}
		changedOnly = new Button(ticks, SWT.CHECK);
		changedOnly.setText(Messages.CasesView_changed);
		changedOnly.setToolTipText(Messages.CasesView_changedHelp);
		changedOnly.addListener(SWT.Selection, e -> list.filter(list.filter().limitedTo(changed())));
	}

	/** @return what is different from before anything was typed, when only that is to be shown */
	private Optional<Set<String>> changed() {
		return changedOnly.getSelection() ? Optional.of(desk.state().saved().map(saved -> Checks.changed(Checks.of(saved), check)).orElse(Set.of())) : Optional.empty();
	}

	private void actions() {
		runAll = action(Messages.CasesView_runAll, () -> run(check.jobs().stream().map(j -> j.job()).toList()));
		runAll.setImageDescriptor(Icon.VERIFY.descriptor());
		runPicked = action(Messages.CasesView_runPicked, this::runPicked);
		stop = action(Messages.CasesView_stop, desk::stop);
		stop.setImageDescriptor(Icon.NONE.descriptor());
		accept = new AcceptAction(getViewSite());
		IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
		bar.add(runAll);
		bar.add(stop);
		bar.add(accept);
		MenuManager menu = new MenuManager();
		menu.add(accept);
		menu.add(runPicked);
		menu.add(runAll);
		list.viewer().getControl().setMenu(menu.createContextMenu(list.viewer().getControl()));
		getViewSite().getActionBars().getMenuManager().add(accept);
		getViewSite().getActionBars().getMenuManager().add(runPicked);
		getViewSite().getActionBars().getMenuManager().add(runAll);
	}

	private static Action action(String text, Runnable does) {
		Action action = new Action(text) {
			@Override
			public void run() {
				does.run();
			}
		};
		action.setToolTipText(text);
		return action;
	}

	private void runPicked() {
		Set<JobCase> picked = list.picked().stream().map(l -> l.checked().job()).collect(Collectors.toSet());
		run(check.jobs().stream().map(j -> j.job()).filter(picked::contains).toList());
	}

	/** A book that could not be worked out to its end is worked out again; else the jobs are run as they are. */
	private void run(List<JobCase> jobs) {
		if (stopped) {
			desk.refresh();
			return;
		}
		Optional<Evaluation> before = desk.state().latest();
		before.flatMap(e -> e.rules().edition()).ifPresent(edition -> new RunAgain(edition, jobs, again -> {
			if (!list.viewer().getControl().isDisposed() && desk.state().latest().equals(before)) {
				show(Checks.with(check, again));
			}
		}).schedule());
	}

	private void picked() {
		List<CaseLine> picked = list.picked();
		accept.picked(picked);
		difference.show(picked.stream().findFirst());
		picked.stream().findFirst().ifPresent(line -> {
			desk.pickJob(line.checked().job().path());
			if (line instanceof CaseLine.OfPoint of && of.point() instanceof SettingPoint setting) {
				desk.pickSetting(setting.setting());
			}
		});
	}

	private void open(CaseLine line) {
		if (line instanceof CaseLine.OfPoint of && of.point().at().line() > 0) {
			Places.open(getSite().getPage(), of.point().at());
		} else {
			Places.openJob(getSite().getPage(), line.checked().job().path());
		}
	}

	private final class Follower implements DeskListener {
		@Override
		public void deskChanged(DeskState before, DeskState now) {
			if (before.latest() != now.latest() || !before.folder().equals(now.folder())) {
				show(now);
			}
		}

		@Override
		public void jobsRun(int done, int all) {
			stop.setEnabled(true);
			setContentDescription(NLS.bind(Messages.CasesView_running, done, all));
		}

		@Override
		public void workStopped() {
			show(desk.state());
			stopped = true;
			runAll.setEnabled(true);
			if (desk.state().folder().isPresent()) {
				setContentDescription(Messages.CasesView_stopped);
			}
		}
	}

	private void show(DeskState now) {
		stop.setEnabled(false);
		stopped = false;
		show(now.latest().map(Checks::of).orElse(new CaseCheck(List.of())));
		boolean runs = now.latest().filter(Evaluation::runs).isPresent();
		runAll.setEnabled(runs);
		runPicked.setEnabled(runs);
		if (now.latest().isEmpty()) {
			setContentDescription(now.folder().isEmpty() ? Messages.CasesView_noBook : Messages.CasesView_reading);
		} else if (!runs) {
			setContentDescription(Messages.Checks_mistakes);
		}
	}

	private void show(CaseCheck now) {
		check = now;
		list.show(now);
		if (changedOnly.getSelection()) {
			list.filter(list.filter().limitedTo(changed()));
		}
		shown.forEach((standing, button) -> button.setText(NLS.bind(Messages.CasesView_filter, CaseColumns.word(standing), now.count(standing))));
		shown.values().iterator().next().requestLayout();
		long notRun = now.jobs().stream().filter(j -> j.outcome().isEmpty()).count();
		setContentDescription(notRun == 0 ? NLS.bind(Messages.CasesView_summary, new Object[] { now.jobs().size(), now.count(Standing.MET), now.count(Standing.NOT_MET) })
				: NLS.bind(Messages.CasesView_someNotRun, new Object[] { now.jobs().size(), notRun, now.count(Standing.NOT_MET) }));
		difference.show(list.picked().stream().findFirst());
		accept.picked(list.picked());
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
