package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.widgets.Composite;
import org.setwright.book.JobEdit;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.twopage.OwnPage;
import org.setwright.workbench.twopage.TwoPageEditor;

/** Edits a job: as a form, or as the text it is kept in. Both are one and the same; undo goes through both. */
public final class JobEditor extends TwoPageEditor implements Places.JobPlaces {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.jobEditor"; //$NON-NLS-1$
	private JobDocument job;
	private JobForm form;

	/** Made by the platform. */
	public JobEditor() {
		super(new JobTextEditor(), Messages.JobEditor_form);
	}

	@Override
	protected OwnPage ownPage(Composite parent, IDocument document) {
		job = new JobDocument(path(), document, BookTexts::catalogue);
		form = new JobForm(parent, job, this::setPartName);
		return form;
	}

	@Override
	public void setFocus() {
		getSite().getService(Desk.class).pickJob(path());
		super.setFocus();
	}

	@Override
	public void show(JobField field) {
		showOwnPage();
		form.show(field);
	}

	@Override
	public Optional<Problem> edit(List<JobEdit> edits) {
		return job.edit(edits);
	}
}
