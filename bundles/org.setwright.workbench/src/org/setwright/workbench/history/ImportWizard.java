package org.setwright.workbench.history;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.wizard.Wizard;
import org.setwright.book.Book;
import org.setwright.book.history.HistoryResult;
import org.setwright.workbench.folder.BookProject;

/** Makes job files of the rows of a CSV file: which file, what its columns mean, whether every row can be read. */
public final class ImportWizard extends Wizard {
	private final ImportPlan plan;
	private final ColumnsPage columns;
	private final CheckPage check;
	private Optional<HistoryResult> result = Optional.empty();

	/** @param book into which the jobs go, unless the person names another folder */
	public ImportWizard(Book book) {
		plan = new ImportPlan(book);
		columns = new ColumnsPage(plan);
		check = new CheckPage(plan);
		setWindowTitle(Messages.ImportWizard_title);
		setNeedsProgressMonitor(true);
	}

	@Override
	public void addPages() {
		addPage(new FilePage(plan));
		addPage(columns);
		addPage(check);
	}

	@Override
	public boolean canFinish() {
		return check.sound();
	}

	@Override
	public boolean performFinish() {
		result = HistoryWork.beside(check, this::importAll, Messages.ImportWizard_failed);
		if (result.isEmpty() || result.get().cancelled() || !result.get().faults().isEmpty()) {
			result.ifPresent(check::show);
			return false;
		}
		return true;
	}

	private HistoryResult importAll(IProgressMonitor monitor) throws IOException {
		HistoryResult came = plan.run(monitor);
		if (plan.intoBook()) {
			refresh();
		}
		return came;
	}

	private static void refresh() throws IOException {
		try {
			if (BookProject.linked().isPresent()) {
				BookProject.linked().get().refreshLocal(IResource.DEPTH_INFINITE, null);
			}
		} catch (CoreException e) {
			throw new IOException(e.getMessage(), e);
		}
	}

	/** Takes what the mapping in {@code file} says of the columns; the page says so when it cannot be read. */
	public void loadMapping(Path file) {
		columns.load(file);
	}

	/** Writes what the columns mean to {@code file}. */
	public void saveMapping(Path file) {
		columns.save(file);
	}

	/** @return how many jobs were imported; 0 when none were */
	public int imported() {
		return result.filter(r -> !r.cancelled() && r.faults().isEmpty()).map(HistoryResult::jobs).orElse(0);
	}
}
