package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.ArrayList;
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
import org.setwright.book.SignOff;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.compare.SettingChange;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.About;
import org.setwright.editions.signing.Matter;
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
	private static final double WIDE_ENOUGH = 1.4;
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
	private ImpactTab impact;
	private AnswersTab answers;
	private SinceTab since;
	private ReviewTab review;
	private Reviewing reviewing;
	private LinesTab lines;
	private Optional<Path> folder = Optional.empty();
	private Optional<Ledger> ledger = Optional.empty();
	private Optional<Optional<Kept>> next = Optional.empty();

	/** What a person can have done here. */
	public enum Act {
		/** Keep the work in hand as an edition. */
		KEEP,
		/** Put a rule back to what it was. */
		PUT_BACK_RULE,
		/** Put the whole book back to what it was. */
		PUT_BACK_BOOK,
		/** Remark on a rule, a decision or the book. */
		REMARK,
		/** Sign an edition. */
		SIGN
	}

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		acts = new Acts(getSite().getPage(), open, this::done);
		reviewing = new Reviewing(getSite().getPage(), open, () -> read(desk.state()));
		pages = parent;
		stack = new StackLayout();
		parent.setLayout(stack);
		begin = new BeginPage(parent, () -> folder(acts::begin));
		SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
		book = sash;
		left(sash);
		right(sash);
		sash.setWeights(SHARES);
		sash.addListener(SWT.Resize, event -> turn(sash));
		stack.topControl = begin.control();
		Repaint.with(parent, this::repaint);
		desk.addListener(listener);
		read(desk.state());
	}

	/** Lays the list above the rest where there is more height than width. */
	private static void turn(SashForm sash) {
		int wanted = sash.getClientArea().width < sash.getClientArea().height * WIDE_ENOUGH ? SWT.VERTICAL : SWT.HORIZONTAL;
		if (sash.getOrientation() != wanted) {
			sash.setOrientation(wanted);
		}
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

	private void right(Composite parent) {
		CTabFolder tabs = new CTabFolder(parent, SWT.BOTTOM | SWT.FLAT);
		changes = new ChangesTab(tabs, this::picked, this::opened);
		CTabItem tab = new CTabItem(tabs, SWT.NONE);
		tab.setText(Messages.EditionsView_changes);
		tab.setControl(changes.control());
		impact = new ImpactTab(tabs, desk, open);
		answers = new AnswersTab(tabs, desk, open, this::look);
		since = new SinceTab(tabs, desk, open, this::look);
		review = new ReviewTab(tabs, () -> act(Act.REMARK), () -> act(Act.SIGN), this::sinceSigned,
				(matter, stand) -> folder(f -> reviewing.answer(f, matter, stand)));
		LineActs lineActs = new LineActs(getSite().getShell(), acts, open);
		PlaceActs places = new PlaceActs(getSite().getShell(), lineActs, open);
		lines = new LinesTab(tabs, () -> folder(lineActs::begin), line -> folder(f -> lineActs.over(f, line)),
				line -> folder(f -> lineActs.join(f, line)), () -> folder(places::receive), () -> folder(places::send));
		tabs.setSelection(0);
	}

	private void repaint() {
		table.viewer().refresh();
		List.of(changes.tree(), impact.tree(), answers.tree(), since.tree(), review.tree(), lines.tree()).forEach(t -> t.viewer().refresh());
	}

	private void look(Kept edition) {
		table.pick(List.of(Optional.of(edition)));
	}

	private void sinceSigned() {
		ledger.ifPresent(l -> table.pick(List.of(l.last(), l.lastSigned())));
	}

	/** Does {@code act} with what is picked here. */
	public void act(Act act) {
		switch (act) {
			case KEEP -> folder(acts::keep);
			case PUT_BACK_RULE -> with(answers.old().or(changes::old), Messages.EditionsView_pickRule, acts::putBack);
			case PUT_BACK_BOOK -> with(edition(), Messages.EditionsView_pickEdition, acts::putBack);
			case REMARK -> folder(f -> reviewing.remark(f, about()));
			case SIGN -> folder(f -> reviewing.sign(f, edition()));
		}
	}

	/** The newest edition that is picked. */
	private Optional<Kept> edition() {
		return table.picked().stream().flatMap(Optional::stream).findFirst();
	}

	/** What a remark may be about: what is picked here or looked at elsewhere. */
	private List<About> about() {
		List<About> about = new ArrayList<>();
		changes.picked().map(c -> c.rule().name()).or(desk.state()::rule).ifPresent(name -> about.add(new About.OfRule(name)));
		desk.state().job().ifPresent(job -> desk.state().setting().ifPresent(s -> about.add(new About.OfDecision(job, s.label()))));
		about.add(new About.OfBook());
		return about;
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
		if (!before.rule().equals(now.rule())) {
			answers.changed();
		}
		if (!before.job().equals(now.job()) || !before.setting().equals(now.setting())) {
			since.changed();
		}
	}

	private void read(DeskState now) {
		if (!now.folder().equals(folder)) {
			folder = now.folder();
			ledger = Optional.empty();
			next = Optional.empty();
			comparing.drop();
			table.clear();
		}
		if (now.folder().isEmpty()) {
			reading.drop();
			comparing.drop();
			ledger = Optional.empty();
			top(begin.control(), Messages.EditionsView_noBook);
			begin.offer(false, Messages.EditionsView_noBook);
		} else {
			Path book = now.folder().get();
			reading.ask(m -> {
				var editions = open.of(book);
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
		if (pages.isDisposed() || now.isPresent() && now.equals(ledger) && next.isEmpty()) {
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
		answers.changed();
		since.changed();
		lines.show(found.lines());
		review.show(found, desk.state().saved().map(e -> e.book().signOff()).orElse(SignOff.NOT_DEMANDED).words());
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
			impact.none();
		} else {
			Path folder = desk.state().folder().get();
			List<Matter> matters = ledger.map(Ledger::matters).orElse(List.of());
			comparing.ask(m -> Optional.of(Compared.of(open.demand(folder), sides.get(), matters)));
		}
	}

	private void compared(Compared now) {
		if (!pages.isDisposed()) {
			changes.show(now);
			impact.show(now);
		}
	}

	private void notCompared(NotDone no) {
		if (!pages.isDisposed()) {
			changes.none(no.getMessage());
			impact.none();
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
		} else if (about instanceof SettingChange change && change.after().isPresent()) {
			Places.open(getSite().getPage(), change.after().get().at());
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
