package org.setwright.workbench.folder;

import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.PlatformUI;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.writing.Manuscript;

/** The texts of the open book's files as they read now: as typed where an editor is open, else as saved. */
public final class BookTexts {
	private BookTexts() {
	}

	/** @param path below the book folder @return its text; empty when there is no such file or it cannot be read */
	public static Optional<String> text(String path) {
		return BookProject.file(path).flatMap(BookTexts::text);
	}

	private static Optional<String> text(IFile file) {
		ITextFileBuffer open = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE);
		try {
			return Optional.of(open != null ? open.getDocument().get() : file.readString());
		} catch (CoreException unreadable) {
			return Optional.empty();
		}
	}

	/** @return the document of the file at {@code path} that its editor works on; empty when none is open */
	public static Optional<IDocument> document(String path) {
		return BookProject.file(path).map(f -> FileBuffers.getTextFileBufferManager().getTextFileBuffer(f.getFullPath(), LocationKind.IFILE))
				.map(ITextFileBuffer::getDocument);
	}

	/** @return where {@code document}, which is open in an editor, belongs, below the book folder; empty when it is no file of the book */
	public static Optional<String> path(IDocument document) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document);
		return Optional.ofNullable(buffer).map(ITextFileBuffer::getLocation).flatMap(BookProject::path);
	}

	/** @return every fact and setting the open book may speak of, as it reads now; those of the trade while none is open */
	public static Catalogue catalogue() {
		return PlatformUI.getWorkbench().getService(Desk.class).state().catalogue();
	}

	/** @return the open book with its texts; empty while it is first being read */
	public static Optional<Manuscript> manuscript(DeskState state) {
		return state.latest().map(e -> new Manuscript(e.book(), BookTexts::text));
	}
}
