package org.setwright.workbench.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.setwright.engine.Inquiry;

/** Looks in the background for what would change the answer; what was found until it is ended is shown. */
final class ChangeSearch extends Job {
	private final Inquiry inquiry;
	private final Optional<Question> question;
	private final org.setwright.trade.catalogue.Job job;
	private final BiConsumer<List<ReasonNode>, String> shown;
	private int trying;

	/** @param shown told, in the window's thread, what is found so far and what is being done; nothing when it is done */
	ChangeSearch(Inquiry inquiry, Optional<Question> question, BiConsumer<List<ReasonNode>, String> shown) {
		super(Messages.ChangeSearch_name);
		this.inquiry = inquiry;
		this.question = question;
		this.shown = shown;
		job = inquiry.outcome().job();
		setPriority(Job.SHORT);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		List<ReasonNode> roots = new ArrayList<>();
		question.ifPresent(q -> roots.add(ChangeTree.of(q.goal(), q.changes(inquiry, changes -> goOn(changes, monitor)), job)));
		tell(roots, monitor.isCanceled() ? "" : Messages.ChangeSearch_checking); //$NON-NLS-1$
		if (!monitor.isCanceled()) {
			roots.add(ChangeTree.of(inquiry.whatMatters(monitor::isCanceled), job));
			tell(roots, ""); //$NON-NLS-1$
		}
		return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
	}

	private boolean goOn(int changes, IProgressMonitor monitor) {
		if (changes != trying) {
			trying = changes;
			String words = NLS.bind(Messages.ChangeSearch_trying, changes);
			monitor.subTask(words);
			tell(List.of(), words);
		}
		return !monitor.isCanceled();
	}

	private void tell(List<ReasonNode> roots, String words) {
		List<ReasonNode> sofar = List.copyOf(roots);
		Display.getDefault().asyncExec(() -> shown.accept(sofar, words));
	}
}
