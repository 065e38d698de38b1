package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.text.IDocument;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.book.JobWriter;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.workbench.folder.TextChange;

/** The text of a job being edited, read as a job and changed edit by edit. Use it in the window's thread. */
final class JobDocument {
	private final String path;
	private final IDocument document;
	private final Supplier<Catalogue> catalogue;
	private String lastText;
	private Catalogue lastCatalogue;
	private JobText lastRead;

	/** @param path of the job below the book folder @param catalogue gives what the book may speak of now */
	JobDocument(String path, IDocument document, Supplier<Catalogue> catalogue) {
		this.path = path;
		this.document = document;
		this.catalogue = catalogue;
	}

	Catalogue catalogue() {
		return catalogue.get();
	}

	/** @return what the text says now */
	JobText read() {
		String text = document.get();
		if (!text.equals(lastText) || !catalogue().equals(lastCatalogue)) {
			lastCatalogue = catalogue();
			lastRead = JobReader.read(path, text, lastCatalogue);
			lastText = text;
		}
		return lastRead;
	}

	/** Makes {@code edits} in the text, as one step to undo. @return why they could not be made, or empty */
	Optional<Problem> edit(List<JobEdit> edits) {
		try {
			String before = document.get();
			String after = new JobWriter(catalogue()).editAll(path, before, edits);
			if (!after.equals(before)) {
				TextChange.between(before, after).in(document);
			}
			return Optional.empty();
		} catch (JobNotWritten refused) {
			return Optional.of(refused.problem());
		}
	}
}
