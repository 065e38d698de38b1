package org.setwright.workbench.desk;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.setwright.book.Book;
import org.setwright.trade.Trade;
import org.setwright.writing.live.LiveTally;
import org.setwright.writing.live.Tally;

/** Counts in the background what becomes of every rule, soon after each key; an older count still going on is dropped. */
final class TallyJob extends Job {
	/** Shorter than that of the full evaluation, which takes longer: the counts come first. */
	private static final int PAUSE_MILLIS = 80;

	/** What is to be counted. @param book as last read @param drafts what has been typed */
	private record Request(Book book, Drafts drafts) {
	}

	private final Consumer<Tally> answer;
	private volatile LiveTally live = new LiveTally(Trade.catalogue());
	private volatile Request newest;
	private volatile Request answered;

	/** @param answer called in the window's thread */
	TallyJob(Consumer<Tally> answer) {
		super(Messages.TallyJob_name);
		this.answer = answer;
		setSystem(true);
		setPriority(Job.SHORT);
	}

	void ask(Book book, Drafts drafts) {
		newest = new Request(book, drafts);
		cancel();
		schedule(PAUSE_MILLIS);
	}

	/** Another book is opened: nothing of this one may stand in for its rules. */
	void forget() {
		live = new LiveTally(Trade.catalogue());
		newest = null;
		cancel();
	}

	boolean awaited() {
		return newest != null && newest != answered;
	}

	/** A fault in the program itself is told once, in a sentence; its trace goes to the log. */
	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Request request = newest;
		try {
			Optional<Tally> tally = request == null ? Optional.empty() : live.count(DraftedBook.of(request.book(), request.drafts()),
					() -> monitor.isCanceled() || request != newest);
			tally.ifPresent(t -> Display.getDefault().asyncExec(() -> tell(request, t)));
			return Status.OK_STATUS;
		} catch (RuntimeException fault) {
			answered = request;
			return new Status(IStatus.ERROR, TallyJob.class, Messages.TallyJob_fault, fault);
		}
	}

	private void tell(Request request, Tally tally) {
		if (request == newest) {
			answered = request;
			answer.accept(tally);
		}
	}
}
