package org.setwright.workbench.uses;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.ltk.core.refactoring.Change;
import org.eclipse.ltk.core.refactoring.Refactoring;
import org.eclipse.ltk.core.refactoring.RefactoringStatus;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.JobNotWritten;
import org.setwright.workbench.fixes.BookChange;
import org.setwright.writing.uses.Renaming;

/** Renaming as the platform does it: refused with a reason, shown before it is done, undone in one piece. */
public final class RenameEverywhere extends Refactoring {
	private final Renaming renaming;
	private String name;

	/** @param renaming what is renamed, in the book as it reads now */
	public RenameEverywhere(Renaming renaming) {
		this.renaming = renaming;
		name = renaming.name();
	}

	@Override
	public String getName() {
		return NLS.bind(Messages.RenameEverywhere_name, renaming.name());
	}

	/** @return what it is called now */
	public String before() {
		return renaming.name();
	}

	/** Takes the new name. @return whether it may be called so */
	public RefactoringStatus name(String wanted) {
		name = wanted;
		RefactoringStatus status = new RefactoringStatus();
		renaming.refusal(wanted).ifPresent(status::addFatalError);
		return status;
	}

	@Override
	public RefactoringStatus checkInitialConditions(IProgressMonitor monitor) {
		return renaming.refusal().map(RefactoringStatus::createFatalErrorStatus).orElseGet(RefactoringStatus::new);
	}

	@Override
	public RefactoringStatus checkFinalConditions(IProgressMonitor monitor) {
		RefactoringStatus status = name(name);
		renaming.warnings(name).forEach(status::addWarning);
		if (!status.hasFatalError()) {
			try {
				renaming.edits(name);
			} catch (JobNotWritten refused) {
				status.addFatalError(NLS.bind(Messages.RenameEverywhere_job, refused.problem().at(), refused.problem().what()));
			}
		}
		return status;
	}

	@Override
	public Change createChange(IProgressMonitor monitor) {
		try {
			return BookChange.of(NLS.bind(Messages.RenameEverywhere_done, renaming.name(), name), renaming.edits(name));
		} catch (JobNotWritten refused) {
			throw new OperationCanceledException(refused.problem().what());
		}
	}
}
