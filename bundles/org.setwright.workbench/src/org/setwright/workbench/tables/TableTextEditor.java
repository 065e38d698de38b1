package org.setwright.workbench.tables;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.contentassist.IContentAssistant;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.editors.text.TextEditor;
import org.eclipse.ui.editors.text.TextSourceViewerConfiguration;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.book.AtomicFile;
import org.setwright.workbench.completing.OfferedWords;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.uses.WordHover;
import org.setwright.writing.completing.TableCompletion;

/** The text of a table. Saving puts the whole file in place at once, so that a power cut leaves the old one or the new one. */
final class TableTextEditor extends TextEditor {
	private static final String MARK = "\uFEFF"; //$NON-NLS-1$

	@Override
	protected void initializeEditor() {
		super.initializeEditor();
		setSourceViewerConfiguration(new TextSourceViewerConfiguration(getPreferenceStore()) {
			@Override
			public ITextHover getTextHover(ISourceViewer viewer, String contentType) {
				return new WordHover();
			}

			@Override
			public IContentAssistant getContentAssistant(ISourceViewer viewer) {
				return OfferedWords.assistant((text, offset) -> new TableCompletion(BookTexts.catalogue()).at(text, offset));
			}
		});
	}

	@Override
	protected void createActions() {
		super.createActions();
		setAction(OfferedWords.ACTION, OfferedWords.action(this));
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		ITextFileBuffer buffer = getEditorInput() instanceof IFileEditorInput input
				? FileBuffers.getTextFileBufferManager().getTextFileBuffer(input.getFile().getFullPath(), LocationKind.IFILE) : null;
		if (buffer == null || !buffer.isSynchronized() || ((IFileEditorInput) getEditorInput()).getFile().getLocation() == null) {
			super.doSave(monitor);
			return;
		}
		IFile file = ((IFileEditorInput) getEditorInput()).getFile();
		Path path = file.getLocation().toFile().toPath();
		try {
			String text = buffer.getDocument().get();
			AtomicFile.write(path, marked(path) ? MARK + text : text);
			buffer.setDirty(false);
			file.refreshLocal(IResource.DEPTH_ZERO, monitor);
		} catch (IOException | CoreException e) {
			buffer.setDirty(true);
			StatusManager.getManager().handle(new Status(IStatus.ERROR, TableTextEditor.class, NLS.bind(Messages.TableEditor_notSaved, e.getMessage()), e),
					StatusManager.SHOW | StatusManager.LOG);
			monitor.setCanceled(true);
		}
	}

	/** The mark some spreadsheets put before the text stays, if it was there. */
	private static boolean marked(Path path) throws IOException {
		byte[] bytes = Files.exists(path) ? Files.readAllBytes(path) : new byte[0];
		return bytes.length > 2 && (bytes[0] & 0xff) == 0xef && (bytes[1] & 0xff) == 0xbb && (bytes[2] & 0xff) == 0xbf;
	}
}
