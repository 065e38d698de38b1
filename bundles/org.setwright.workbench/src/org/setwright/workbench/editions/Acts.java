package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.git.WorkInHand;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.workbench.folder.FolderChanges;

/** What can be done to the editions of the open book. Each act asks first, runs beside the window, and says why when it is not done. */
final class Acts {
	private final IWorkbenchPage page;
	private final OpenEditions open;
	private final Consumer<Optional<Kept>> done;

	/** @param done told after each act which edition is to be looked at, empty for the work in hand; in the window's thread */
	Acts(IWorkbenchPage page, OpenEditions open, Consumer<Optional<Kept>> done) {
		this.page = page;
		this.open = open;
		this.done = done;
	}

	private Shell shell() {
		return page.getWorkbenchWindow().getShell();
	}

	/** Starts a repository for the book in {@code folder}. */
	void begin(Path folder) {
		Doing.start(shell(), Messages.Acts_begin, m -> Optional.of(open.begin(folder)), e -> done.accept(Optional.empty()));
	}

	/** What there is to keep. @param suggestion a message */
	private record Draft(WorkInHand work, String suggestion, Author author) {
		static Draft of(EditionsOf editions) throws NotDone {
			WorkInHand work = editions.work();
			if (work.notKept().isEmpty()) {
				throw new NotDone(Messages.Acts_nothing, Messages.Acts_changeFirst);
			}
			return new Draft(work, editions.suggestion(), Author.of(editions));
		}
	}

	/** Keeps the work in hand, after what is being typed was saved. */
	void keep(Path folder) {
		if (page.saveAllEditors(true)) {
			Doing.start(shell(), Messages.Acts_keep, m -> Optional.of(Draft.of(open.demand(folder))), draft -> keep(folder, draft));
		}
	}

	private void keep(Path folder, Draft draft) {
		String files = NLS.bind(Messages.Acts_keepFiles, draft.work().notKept().size(), String.join("\n", draft.work().notKept())); //$NON-NLS-1$
		Entry entry = new Entry(Messages.Acts_keep, Messages.Acts_keepHelp, Messages.Acts_keepButton, files, List.of(), Messages.Acts_message,
				draft.suggestion(), true, draft.author());
		new EntryDialog(shell(), entry).ask().ifPresent(said -> Doing.start(shell(), Messages.Acts_keep,
				m -> Optional.of(open.demand(folder).keep(draft.work(), said.words().strip(), Optional.of(said.by()))), kept -> done.accept(Optional.of(kept))));
	}

	/** Puts a rule back to what it was, as work in hand. */
	void putBack(Path folder, OldRule old) {
		if (nothingTyped(Messages.Acts_putBackRule) && MessageDialog.openConfirm(shell(), Messages.Acts_putBackRule,
				NLS.bind(Messages.Acts_putBackRuleAsk, old.name(), old.edition().shown()))) {
			Doing.start(shell(), Messages.Acts_putBackRule, m -> Optional.of(open.demand(folder).restore(old.edition(), old.name())), path -> putBack());
		}
	}

	/** Makes the folder of the book hold what an edition held, as work in hand. */
	void putBack(Path folder, Kept edition) {
		if (nothingTyped(Messages.Acts_putBackBook)
				&& MessageDialog.openConfirm(shell(), Messages.Acts_putBackBook, NLS.bind(Messages.Acts_putBackBookAsk, edition.shown()))) {
			Doing.start(shell(), Messages.Acts_putBackBook, m -> {
				open.demand(folder).restore(edition);
				return Optional.of(edition);
			}, e -> putBack());
		}
	}

	private void putBack() {
		FolderChanges.look();
		done.accept(Optional.empty());
	}

	/** Has the view look at an edition, or at the work in hand. */
	void look(Optional<Kept> edition) {
		done.accept(edition);
	}

	/** Files are about to change below the editors. @return whether nothing is lost by that; says so when something would be */
	boolean nothingTyped(String title) {
		if (page.saveAllEditors(true) && page.getDirtyEditors().length > 0) {
			Doing.refuse(shell(), title, new NotDone(Messages.Acts_typed, Messages.Acts_saveFirst));
		}
		return page.getDirtyEditors().length == 0;
	}
}
