package org.setwright.workbench.fitness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.setwright.book.AtomicFile;
import org.setwright.book.JobNotWritten;
import org.setwright.check.strength.Catching;
import org.setwright.check.strength.Recorded;
import org.setwright.engine.Edition;
import org.setwright.workbench.folder.BookProject;

/** Saves jobs that were found as jobs of the book. */
final class FoundJobs {
	private static final String ENDING = ".yaml"; //$NON-NLS-1$
	private final Path book;

	/** @param book its folder */
	FoundJobs(Path book) {
		this.book = book;
	}

	/**
	 * @param edition the rules as they are now
	 * @return where it was saved, below the book; empty when the rules say something else by now, so that it would notice nothing
	 */
	Optional<String> save(Catching catching, Edition edition) throws IOException, JobNotWritten {
		Optional<Recorded> recorded = Recorded.of(catching, edition, LocalDate.now());
		if (recorded.isEmpty()) {
			return Optional.empty();
		}
		String path = free(recorded.get().file());
		Files.createDirectories(book.resolve(path).getParent());
		AtomicFile.write(book.resolve(path), recorded.get().text());
		return Optional.of(path);
	}

	private String free(String file) {
		String stem = "jobs/" + file.substring(0, file.length() - ENDING.length()); //$NON-NLS-1$
		String path = stem + ENDING;
		for (int i = 2; Files.exists(book.resolve(path)); i++) {
			path = stem + '-' + i + ENDING;
		}
		return path;
	}

	/** Lets the window see what was saved. */
	static void refresh() throws CoreException {
		Optional<IFolder> folder = BookProject.linked();
		if (folder.isPresent()) {
			folder.get().refreshLocal(IResource.DEPTH_INFINITE, null);
		}
	}
}
