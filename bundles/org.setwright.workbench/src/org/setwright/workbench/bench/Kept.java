package org.setwright.workbench.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.osgi.util.NLS;
import org.setwright.bench.keeping.Keeping;
import org.setwright.bench.keeping.NotKept;
import org.setwright.bench.told.Tone;
import org.setwright.book.AtomicFile;
import org.setwright.workbench.folder.BookProject;

/**
 * Keeps something in a file of the book. A file in which somebody types is changed there, as one step to undo, and is not
 * saved, so that nothing typed is lost; any other is written in one step.
 */
record Kept(Path folder) {

	/** Does it. Call in the window's thread. @return what to tell of {@code line} */
	Told keep(String line, Keeping keeping) {
		try {
			Optional<ITextFileBuffer> typing = typing(keeping.path());
			if (typing.isPresent()) {
				type(typing.get(), keeping);
				return Told.sentence(line, Tone.GOOD, NLS.bind(Messages.Kept_unsaved, keeping.done()));
			}
			write(keeping);
			return Told.sentence(line, Tone.GOOD, keeping.done());
		} catch (NotKept why) {
			return Told.sentence(line, Tone.ALARM, why.getMessage());
		} catch (IOException unwritable) {
			ILog.of(Kept.class).warn(keeping.path() + " was not written", unwritable); //$NON-NLS-1$
			return Told.sentence(line, Tone.ALARM, NLS.bind(Messages.Kept_failed, keeping.path()));
		}
	}

	/** The text of a file with changes that have not been saved. */
	private static Optional<ITextFileBuffer> typing(String path) {
		return BookProject.file(path).map(f -> FileBuffers.getTextFileBufferManager().getTextFileBuffer(f.getFullPath(), LocationKind.IFILE))
				.filter(ITextFileBuffer::isDirty);
	}

	private static void type(ITextFileBuffer buffer, Keeping keeping) throws NotKept {
		IDocument document = buffer.getDocument();
		String before = document.get();
		String after = keeping.edit().of(Optional.of(before));
		int same = 0;
		int most = Math.min(before.length(), after.length());
		while (same < most && before.charAt(same) == after.charAt(same)) {
			same++;
		}
		int end = 0;
		while (end < most - same && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
			end++;
		}
		try {
			document.replace(same, before.length() - end - same, after.substring(same, after.length() - end));
		} catch (BadLocationException impossible) {
			throw new IllegalStateException(keeping.path(), impossible);
		}
	}

	private void write(Keeping keeping) throws NotKept, IOException {
		Path file = folder.resolve(keeping.path());
		Optional<String> now = Files.exists(file) ? Optional.of(Files.readString(file, StandardCharsets.UTF_8)) : Optional.empty();
		String after = keeping.edit().of(now);
		Files.createDirectories(file.getParent());
		AtomicFile.write(file, after);
		Optional<IFolder> linked = BookProject.linked();
		try {
			if (linked.isPresent()) {
				linked.get().refreshLocal(IResource.DEPTH_INFINITE, null);
			}
		} catch (CoreException later) {
			ILog.of(Kept.class).warn("the folder is looked at later", later); //$NON-NLS-1$
		}
	}
}
