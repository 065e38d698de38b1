package org.setwright.workbench.editions;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.custom.CTabFolder;
import org.setwright.book.JobCase;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.since.Since;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.rows.RowTree;

/** Since when, and by which change, the job that is looked at comes to its value of the setting that is looked at. */
final class SinceTab {
	private final Desk desk;
	private final OpenEditions open;
	private final ListPane pane;
	private final WhenSeen seen;
	private final Asking<Since> asking = new Asking<>(Messages.SinceTab_name, this::told, this::refused);

	/** @param opened told which edition is to be looked at */
	SinceTab(CTabFolder tabs, Desk desk, OpenEditions open, Consumer<Kept> opened) {
		this.desk = desk;
		this.open = open;
		pane = new ListPane(tabs, Messages.SinceTab_list, SinceRows.COLUMNS);
		seen = new WhenSeen(tabs, Messages.SinceTab_title, pane.control(), this::ask);
		pane.tree().onPick(about -> {
			// the edition is shown when the line is opened
		}, about -> opened.accept((Kept) about));
		pane.control().addDisposeListener(e -> asking.drop());
	}

	RowTree tree() {
		return pane.tree();
	}

	/** Another job or setting is looked at, or the editions are other ones. */
	void changed() {
		seen.due();
	}

	private void ask() {
		DeskState now = desk.state();
		Optional<JobCase> job = now.jobCase();
		Optional<Setting> setting = now.setting();
		if (now.folder().isEmpty() || job.isEmpty() || setting.isEmpty()) {
			asking.drop();
			pane.show(Messages.SinceTab_pick, List.of());
		} else {
			pane.show(NLS.bind(Messages.SinceTab_asking, job.get().name(), setting.get().label()), List.of());
			asking.ask(m -> Optional.of(open.demand(now.folder().get()).since(job.get(), setting.get())));
		}
	}

	private void told(Since since) {
		pane.show(NLS.bind(Messages.SinceTab_comes, new Object[] { since.job().name(), since.setting().label(), since.value() }), SinceRows.of(since));
	}

	private void refused(NotDone no) {
		pane.show(no.getMessage(), List.of());
	}
}
