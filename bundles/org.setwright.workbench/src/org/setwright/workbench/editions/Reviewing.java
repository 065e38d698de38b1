package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.setwright.check.Progress;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.git.BookPart;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.About;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remark;
import org.setwright.editions.signing.Remarks;
import org.setwright.editions.signing.Review;
import org.setwright.editions.signing.SignedOff;
import org.setwright.workbench.folder.FolderChanges;

/** Remarks on rules, on decisions and on the book, and signing. */
final class Reviewing {
	private final IWorkbenchPage page;
	private final OpenEditions open;
	private final Runnable done;

	/** @param done told after each act, in the window's thread */
	Reviewing(IWorkbenchPage page, OpenEditions open, Runnable done) {
		this.page = page;
		this.open = open;
		this.done = done;
	}

	private Shell shell() {
		return page.getWorkbenchWindow().getShell();
	}

	/** Remarks on something new. @param about what it may be about; not empty */
	void remark(Path folder, List<About> about) {
		Doing.start(shell(), Messages.Reviewing_remark, m -> Optional.of(Author.of(open.demand(folder))), author -> {
			List<String> choices = about.stream().map(About::words).toList();
			Entry entry = new Entry(Messages.Reviewing_remark, Messages.Reviewing_remarkHelp, Messages.Reviewing_remarkButton, "", choices, //$NON-NLS-1$
					Messages.Reviewing_words, "", true, author); //$NON-NLS-1$
			new EntryDialog(shell(), entry).ask()
					.ifPresent(said -> write(folder, Messages.Reviewing_remark, Optional.empty(), about.get(said.choice()), Remark.Stand.OPEN, said));
		});
	}

	/** Says something more on a matter. @param stand what that does to it */
	void answer(Path folder, Matter matter, Remark.Stand stand) {
		String title = stand == Remark.Stand.SETTLED ? Messages.Reviewing_settle : Messages.Reviewing_answer;
		Doing.start(shell(), title, m -> Optional.of(Author.of(open.demand(folder))), author -> {
			List<String> said = matter.remarks().stream().map(r -> NLS.bind(Messages.Reviewing_said, r.by().name(), r.text())).toList();
			Entry entry = new Entry(title, NLS.bind(Messages.Reviewing_on, matter.about().words()), title, String.join("\n\n", said), List.of(), //$NON-NLS-1$
					Messages.Reviewing_words, "", true, author); //$NON-NLS-1$
			new EntryDialog(shell(), entry).ask().ifPresent(words -> write(folder, title, Optional.of(matter.thread()), matter.about(), stand, words));
		});
	}

	private void write(Path folder, String title, Optional<String> thread, About about, Remark.Stand stand, Entry.Said said) {
		Doing.start(shell(), title, m -> {
			EditionsOf editions = open.demand(folder);
			String edition = editions.last().map(e -> e.id().shown()).orElse(""); //$NON-NLS-1$
			return Optional.of(Remarks.write(editions.repo().folder(), thread, about, edition, said.by(), OffsetDateTime.now(), stand, said.words(),
					Remarks.in(editions.work().files())));
		}, remark -> {
			FolderChanges.look();
			done.run();
		});
	}

	/** What there is to look at before signing. */
	private record Draft(Kept edition, String shown, Author author) {
		static Draft of(EditionsOf editions, Optional<Kept> picked) throws NotDone {
			Kept edition = picked.isPresent() ? picked.get() : editions.demandLast();
			if (editions.work().notKept().stream().anyMatch(p -> p.startsWith(BookPart.REMARKS + "/"))) { //$NON-NLS-1$
				throw new NotDone(Messages.Reviewing_remarksNotKept, Messages.Reviewing_keepRemarks);
			}
			Review review = editions.signOffs().review(edition, Remarks.in(editions.work().files()));
			List<String> lines = new ArrayList<>();
			lines.add(NLS.bind(Messages.Reviewing_edition, edition.shown()));
			lines.add(NLS.bind(Messages.Reviewing_demands, editions.shelf().book(editions.at(edition)).signOff().words()));
			lines.add(review.last().map(s -> NLS.bind(Messages.Reviewing_last, s.edition().shown(), s.shown())).orElse(Messages.Reviewing_never));
			lines.add(NLS.bind(Messages.Reviewing_open, review.open().size()));
			int number = review.changes().rules().size() + review.changes().settings().size() + review.changes().jobs().size() + review.changes().files().size();
			lines.add(NLS.bind(Messages.Reviewing_changes, number));
			review.changes().rules().forEach(c -> lines.add("- " + c.shown())); //$NON-NLS-1$
			review.changes().settings().forEach(c -> lines.add("- " + c.shown())); //$NON-NLS-1$
			review.changes().jobs().forEach(c -> lines.add("- " + c.job().name() + ": " + c.what())); //$NON-NLS-1$ //$NON-NLS-2$
			review.changes().files().forEach(f -> lines.add("- " + f)); //$NON-NLS-1$
			return new Draft(edition, String.join("\n", lines), Author.of(editions)); //$NON-NLS-1$
		}
	}

	/** Signs an edition after its job cases were run. @param picked empty for the last one */
	void sign(Path folder, Optional<Kept> picked) {
		Doing.start(shell(), Messages.Reviewing_sign, m -> Optional.of(Draft.of(open.demand(folder), picked)), draft -> {
			Entry entry = new Entry(Messages.Reviewing_sign, Messages.Reviewing_signHelp, Messages.Reviewing_sign, draft.shown(), List.of(),
					Messages.Reviewing_note, "", false, draft.author()); //$NON-NLS-1$
			new EntryDialog(shell(), entry).ask().ifPresent(said -> Doing.start(shell(), Messages.Reviewing_sign,
					m -> sign(folder, draft.edition(), said, m), s -> done.run()));
		});
	}

	private Optional<SignedOff> sign(Path folder, Kept edition, Entry.Said said, IProgressMonitor monitor) throws NotDone {
		EditionsOf editions = open.demand(folder);
		try {
			String remarksOf = editions.repo().tip().orElse(edition.id().hash());
			return Optional.of(editions.signOffs().sign(edition, editions.remarksAt(remarksOf), said.by(), said.words(), watched(monitor)));
		} catch (NotDone no) {
			if (monitor.isCanceled()) {
				return Optional.empty();
			}
			throw no;
		}
	}

	private static Progress watched(IProgressMonitor monitor) {
		return new Progress() {
			@Override
			public void done(int done, int all) {
				monitor.subTask(NLS.bind(Messages.Reviewing_far, done, all));
			}

			@Override
			public boolean cancelled() {
				return monitor.isCanceled();
			}
		};
	}
}
