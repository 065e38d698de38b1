package org.setwright.workbench.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.wizard.Wizard;
import org.setwright.book.history.HistoryExport;
import org.setwright.book.history.HistoryResult;
import org.setwright.trade.catalogue.Catalogue;

/** Writes the saved jobs of a book as one CSV file. */
public final class ExportWizard extends Wizard {
	private final Catalogue catalogue;
	private final Path jobs;
	private final ExportPage page;

	/** @param book the folder of the book @param catalogue what it may speak of */
	public ExportWizard(Path book, Catalogue catalogue) {
		this.catalogue = catalogue;
		jobs = book.resolve("jobs"); //$NON-NLS-1$
		page = new ExportPage();
		setWindowTitle(Messages.ExportWizard_title);
		setNeedsProgressMonitor(true);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		Path csv = page.file();
		Optional<HistoryResult> result = HistoryWork.beside(page, monitor -> export(csv, monitor), Messages.ExportWizard_failed);
		result.ifPresent(page::show);
		return result.filter(r -> !r.cancelled() && r.faults().isEmpty()).isPresent();
	}

	private HistoryResult export(Path csv, IProgressMonitor monitor) throws IOException {
		monitor.beginTask(Messages.ExportWizard_exporting, count());
		try {
			return new HistoryExport(catalogue).run(jobs, csv, new Watched(monitor, 1));
		} finally {
			monitor.done();
		}
	}

	private int count() throws IOException {
		try (Stream<Path> files = Files.list(jobs)) {
			return (int) files.count();
		}
	}
}
