package org.setwright.workbench.fitness;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.ViewPart;
import org.setwright.book.Position;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.fitness.Reached;
import org.setwright.check.strength.Strength.Tried;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.RowTree;
import org.setwright.workbench.rows.RowTree.Manner;

/** Would the saved jobs notice a slip? What they try out of the rules, and which deliberate mistakes nobody notices. */
public final class FitnessView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.fitness"; //$NON-NLS-1$
	private final DeskListener listener = this::deskChanged;
	private final CoverageJob counting = new CoverageJob(this::counted);
	private final IPartListener2 seen = new Seen();
	private Desk desk;
	private Composite figures;
	private Text search;
	private Button lackingOnly;
	private RowTree rules;
	private RowTree settings;
	private MistakesTab mistakes;
	private Optional<Coverage> coverage = Optional.empty();
	private Optional<Evaluation> toCount = Optional.empty();

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(parent);
		figures = new Composite(parent, SWT.NONE);
		figures.setLayout(new RowLayout());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(figures);
		filters(parent);
		CTabFolder tabs = new CTabFolder(parent, SWT.BOTTOM | SWT.FLAT);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tabs);
		rules = new RowTree(tabs, Messages.FitnessView_rules, RuleLines.COLUMNS, Manner.COUNTED);
		settings = new RowTree(tabs, Messages.FitnessView_settings, SettingLines.COLUMNS, Manner.COUNTED);
		mistakes = new MistakesTab(tabs, this::figures);
		tab(tabs, Messages.FitnessView_rules, rules.control());
		tab(tabs, Messages.FitnessView_settings, settings.control());
		tab(tabs, Messages.FitnessView_mistakes, mistakes.control());
		tabs.setSelection(0);
		List.of(rules, settings, mistakes.tree()).forEach(t -> t.onPick(about -> about.ifPresent(this::picked), this::open));
		Repaint.with(parent, () -> List.of(rules, settings, mistakes.tree()).forEach(t -> t.viewer().refresh()));
		getSite().getPage().addPartListener(seen);
		desk.addListener(listener);
		filter();
		show(desk.state());
	}

	private void filters(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(14, 0).applyTo(row);
		search = new Text(row, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		search.setMessage(Messages.FitnessView_search);
		Spoken.as(search, Messages.FitnessView_search);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		search.addListener(SWT.Modify, e -> filter());
		lackingOnly = new Button(row, SWT.CHECK);
		lackingOnly.setText(Messages.FitnessView_lacking);
		lackingOnly.setSelection(true);
		lackingOnly.addListener(SWT.Selection, e -> filter());
	}

	private static void tab(CTabFolder tabs, String title, Control control) {
		CTabItem tab = new CTabItem(tabs, SWT.NONE);
		tab.setText(title);
		tab.setControl(control);
	}

	private void filter() {
		List.of(rules, settings, mistakes.tree()).forEach(t -> t.filter(lackingOnly.getSelection(), search.getText()));
	}

	private void picked(Object about) {
		if (about instanceof Rule rule) {
			desk.pickRule(rule.name());
		} else if (about instanceof Tried tried) {
			desk.pickRule(tried.mistake().rule().name());
		} else if (about instanceof Setting setting) {
			desk.pickSetting(setting);
		}
	}

	private void open(Object about) {
		if (about instanceof Rule rule) {
			Places.open(getSite().getPage(), rule.at());
		} else if (about instanceof Position at) {
			Places.open(getSite().getPage(), at);
		} else if (about instanceof Tried tried) {
			Places.open(getSite().getPage(), tried.mistake().at());
		}
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.folder().equals(now.folder())) {
			show(now);
		}
	}

	private void show(DeskState now) {
		mistakes.show(now.latest());
		if (now.latest().isEmpty()) {
			count(Optional.empty());
			setContentDescription(now.folder().isEmpty() ? Messages.FitnessView_noBook : Messages.FitnessView_reading);
		} else if (!now.latest().get().runs()) {
			setContentDescription(Messages.FitnessView_stopped);
		} else {
			count(now.latest().get());
		}
	}

	/** What nobody sees is counted when somebody looks. */
	private void count(Evaluation of) {
		toCount = Optional.of(of);
		if (getSite().getPage().isPartVisible(this)) {
			toCount = Optional.empty();
			counting.ask(of);
		}
	}

	private final class Seen implements IPartListener2 {
		@Override
		public void partVisible(IWorkbenchPartReference part) {
			if (part.getPart(false) == FitnessView.this) {
				toCount.ifPresent(FitnessView.this::count);
			}
		}
	}

	private void counted(Evaluation of, Coverage now) {
		if (!figures.isDisposed() && desk.state().latest().filter(e -> e == of).isPresent()) {
			setContentDescription(""); //$NON-NLS-1$
			count(Optional.of(now));
		}
	}

	private void count(Optional<Coverage> now) {
		coverage = now;
		rules.show(now.map(RuleLines::of).orElse(List.of()));
		settings.show(now.map(SettingLines::of).orElse(List.of()));
		figures();
	}

	/** What is reached, beside what the book demands. */
	private void figures() {
		for (Control old : figures.getChildren()) {
			old.dispose();
		}
		desk.state().latest().ifPresent(e -> coverage.ifPresent(c -> Reached.of(e.book().floors(), c, mistakes.strength()).forEach(r -> {
			CLabel label = new CLabel(figures, SWT.NONE);
			label.setText(r.sentence());
			label.setImage((r.enough() ? Icon.AS_EXPECTED : Icon.DIFFERS).image());
			Spoken.as(label, r.figure().words());
		})));
		figures.getParent().layout(true, true);
	}

	@Override
	public void setFocus() {
		search.setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		getSite().getPage().removePartListener(seen);
		counting.cancel();
		super.dispose();
	}
}
