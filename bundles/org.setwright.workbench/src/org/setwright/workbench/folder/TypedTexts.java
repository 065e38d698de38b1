package org.setwright.workbench.folder;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.IFileBufferListener;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.swt.widgets.Display;
import org.setwright.workbench.desk.Desk;

/** Tells the desk what is being typed into any file of the book, in whatever editor. */
public final class TypedTexts implements IFileBufferListener {
	private final Desk desk;
	private final Map<ITextFileBuffer, IDocumentListener> open = new HashMap<>();

	/** @param desk to be told */
	public TypedTexts(Desk desk) {
		this.desk = desk;
	}

	/** Begins to listen; for as long as the window lives. */
	public void start() {
		FileBuffers.getTextFileBufferManager().addFileBufferListener(this);
	}

	@Override
	public void bufferCreated(IFileBuffer buffer) {
		if (buffer instanceof ITextFileBuffer text && path(buffer).isPresent()) {
			IDocumentListener listener = new IDocumentListener() {
				@Override
				public void documentAboutToBeChanged(DocumentEvent event) {
					// only what it becomes is of interest
				}

				@Override
				public void documentChanged(DocumentEvent event) {
					type(text);
				}
			};
			open.put(text, listener);
			text.getDocument().addDocumentListener(listener);
		}
	}

	@Override
	public void bufferDisposed(IFileBuffer buffer) {
		IDocumentListener listener = buffer instanceof ITextFileBuffer text ? open.remove(text) : null;
		if (listener != null) {
			((ITextFileBuffer) buffer).getDocument().removeDocumentListener(listener);
			path(buffer).ifPresent(path -> Display.getDefault().asyncExec(() -> desk.typed(path)));
		}
	}

	/** Saving and going back to the saved text both end in a clean buffer. */
	@Override
	public void dirtyStateChanged(IFileBuffer buffer, boolean dirty) {
		if (!dirty && open.containsKey(buffer)) {
			path(buffer).ifPresent(path -> Display.getDefault().asyncExec(() -> desk.typed(path)));
		}
	}

	private void type(ITextFileBuffer buffer) {
		Runnable tell = () -> path(buffer).filter(p -> open.containsKey(buffer) && buffer.isDirty())
				.ifPresent(path -> desk.type(path, buffer.getDocument().get()));
		// later, because the buffer only turns dirty after the event
		Display.getDefault().asyncExec(tell);
	}

	private static Optional<String> path(IFileBuffer buffer) {
		IPath location = buffer.getLocation();
		return location == null ? Optional.empty() : BookProject.path(location);
	}

	@Override
	public void bufferContentAboutToBeReplaced(IFileBuffer buffer) {
		// the document tells
	}

	@Override
	public void bufferContentReplaced(IFileBuffer buffer) {
		// the document tells
	}

	@Override
	public void stateChanging(IFileBuffer buffer) {
		// of no interest
	}

	@Override
	public void stateValidationChanged(IFileBuffer buffer, boolean isStateValidated) {
		// of no interest
	}

	@Override
	public void underlyingFileMoved(IFileBuffer buffer, IPath path) {
		// the buffer is disposed
	}

	@Override
	public void underlyingFileDeleted(IFileBuffer buffer) {
		// the buffer is disposed
	}

	@Override
	public void stateChangeFailed(IFileBuffer buffer) {
		// the platform tells the person
	}
}
