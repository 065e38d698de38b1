package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.ViewPart;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.engine.language.Rule;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Repaint;

/** What changed, what does it mean, and who signed it? The editions of the open book, and any two of them compared. */
public final class EditionsView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.editions"; //$NON-NLS-1$
	private static final int[] SHARES = { 40, 60 };
	private final DeskListener listener = this::deskChanged;
	private final OpenEditions open = new OpenEditions();
	private final Asking<Optional<Ledger>> reading = new Asking<>(Messages.EditionsView_reading, this::show, this::refused);
	private final Asking<Compared> comparing = new Asking<>(Messages.EditionsView_comparing, this::compared, this::notCompared);
	private Desk desk;
	private Acts acts;
	private StackLayout stack;
	private Composite pages;
	private Control book;
	private BeginPage begin;
	private EditionTable table;
	private ChangesTab changes;
	private Optional<Ledger> ledger = Optional.empty();
	private Optional<Optional<Kept>> next = Optional.empty();

	/** What a person can have done here. */
	public enum Act {
		/** Keep the work in hand as an edition. */
		KEEP,
		/** Put a rule back to what it was. */
		PUT_BACK_RULE,
		/** Put the whole book back to what it was. */
		PUT_BACK_BOOK
	}

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		acts = new Acts(getSite().getPage(), open, this::done);
		pages = parent;
		stack = new StackLayout();
		parent.setLayout(stack);
		begin = new BeginPage(parent, () -> folder(acts::begin));
		SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
		book = sash;
		left(sash);
		CTabFolder tabs = new CTabFolder(sash, SWT.BOTTOM | SWT.FLAT);
		changes = new ChangesTab(tabs, this::picked, this::opened);
		tab(tabs, Messages.EditionsView_changes, changes.control());
		tabs.setSelection(0);
		sash.setWeights(SHARES);
		stack.topControl = begin.control();
		Repaint.with(parent, this::repaint);
		desk.addListener(listener);
		read(desk.state());
	}

	private void left(Composite parent) {
		Composite left = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(left);
		ActButtons buttons = new ActButtons(left, this::act);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons.control());
		table = new EditionTable(left, this::compare);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
		MenuManager menu = new MenuManager();
		ActButtons.actions(this::act).forEach(menu::add);
		ActButtons.actions(this::act).forEach(getViewSite().getActionBars().getMenuManager()::add);
		table.viewer().getControl().setMenu(menu.createContextMenu(table.viewer().getControl()));
		getSite().setSelectionProvider(table.viewer());
	}

	private static void tab(CTabFolder tabs, String title, Control control) {
		CTabItem tab = new CTabItem(tabs, SWT.NONE);
		tab.setText(title);
		tab.setControl(control);
	}

	private void repaint() {
		table.viewer().refresh();
		changes.tree().viewer().refresh();
	}

	/** Does {@code act} with what is picked here. */
	public void act(Act act) {
		switch (act) {
			case KEEP -> folder(acts::keep);
			case PUT_BACK_RULE -> with(changes.old(), Messages.EditionsView_pickRule, acts::putBack);
			case PUT_BACK_BOOK -> with(table.picked().stream().flatMap(Optional::stream).findFirst(), Messages.EditionsView_pickEdition, acts::putBack);
		}
	}

	private void folder(Consumer<Path> does) {
		desk.state().folder().ifPresentOrElse(does, () -> Doing.refuse(getSite().getShell(), getTitle(),
				new NotDone(Messages.EditionsView_noBookOpen, Messages.EditionsView_openFirst)));
	}

	private <T> void with(Optional<T> picked, String otherwise, BiConsumer<Path, T> does) {
		picked.ifPresentOrElse(p -> folder(f -> does.accept(f, p)), () -> Doing.refuse(getSite().getShell(), getTitle(),
				new NotDone(Messages.EditionsView_nothingPicked, otherwise)));
	}

	private void done(Optional<Kept> look) {
		next = Optional.of(look);
		read(desk.state());
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.saved() != now.saved() || !before.folder().equals(now.folder())) {
			read(now);
		}
	}

	private void read(DeskState now) {
		if (now.folder().isEmpty()) {
			reading.drop();
			comparing.drop();
			ledger = Optional.empty();
			top(begin.control(), Messages.EditionsView_noBook);
			begin.offer(false, Messages.EditionsView_noBook);
		} else {
			Path folder = now.folder().get();
			reading.ask(m -> {
				var editions = open.of(folder);
				return Optional.of(editions.isPresent() ? Optional.of(Ledger.of(editions.get())) : Optional.empty());
			});
		}
	}

	private void refused(NotDone no) {
		if (pages.isDisposed()) {
			return;
		}
		ledger = Optional.empty();
		begin.offer(false, no.what() + "\n\n" + no.remedy()); //$NON-NLS-1$
		top(begin.control(), no.what());
	}

	private void show(Optional<Ledger> now) {
		if (pages.isDisposed()) {
			return;
		}
		ledger = now;
		if (now.isEmpty()) {
			begin.offer(true, Messages.EditionsView_noRepository);
			top(begin.control(), ""); //$NON-NLS-1$
			return;
		}
		Ledger found = now.get();
		top(book, NLS.bind(Messages.EditionsView_summary, new Object[] { found.line().orElse(Messages.EditionsView_noLine), found.history().size(),
				found.signed().size(), found.work().notKept().size() }));
		table.show(found);
		next.ifPresent(e -> table.pick(List.of(e)));
		next = Optional.empty();
		compare();
	}

	private void top(Control control, String description) {
		stack.topControl = control;
		setContentDescription(description);
		pages.layout();
	}

	/** Compares what is picked. */
	private void compare() {
		Optional<Sides> sides = ledger.flatMap(l -> Sides.of(table.picked(), l));
		if (sides.isEmpty() || desk.state().folder().isEmpty()) {
			comparing.drop();
			changes.none(Messages.EditionsView_pickEdition);
		} else {
			Path folder = desk.state().folder().get();
			comparing.ask(m -> Optional.of(Compared.of(open.demand(folder), sides.get())));
		}
	}

	private void compared(Compared now) {
		if (!pages.isDisposed()) {
			changes.show(now);
		}
	}

	private void notCompared(NotDone no) {
		if (!pages.isDisposed()) {
			changes.none(no.getMessage());
		}
	}

	private void picked(Object about) {
		if (about instanceof RuleChange change) {
			rule(change.rule().name()).ifPresent(r -> desk.pickRule(r.name()));
		} else if (about instanceof FileTexts file) {
			desk.state().latest().flatMap(e -> e.job(file.path())).ifPresent(j -> desk.pickJob(j.path()));
		}
	}

	private void opened(Object about) {
		if (about instanceof RuleChange change) {
			rule(change.rule().name()).ifPresent(r -> Places.open(getSite().getPage(), r.at()));
		} else if (about instanceof FileTexts file && desk.state().latest().flatMap(e -> e.job(file.path())).isPresent()) {
			Places.openJob(getSite().getPage(), file.path());
		}
	}

	/** The rule as it is in hand. */
	private Optional<Rule> rule(String name) {
		return desk.state().edition().stream().flatMap(e -> e.rules().stream()).filter(r -> r.name().equals(name)).findFirst();
	}

	@Override
	public void setFocus() {
		stack.topControl.setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		reading.drop();
		comparing.drop();
		open.close();
		super.dispose();
	}
}
