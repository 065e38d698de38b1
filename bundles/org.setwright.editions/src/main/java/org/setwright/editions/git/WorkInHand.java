package org.setwright.editions.git;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.Status;
import org.eclipse.jgit.api.StatusCommand;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.setwright.editions.kept.NotDone;

/**
 * The files of a book as they lie in its folder now. Immutable: a later look may see other files.
 *
 * @param files their bytes
 * @param notKept the paths below the book that differ from the last edition, sorted
 */
public record WorkInHand(InHand files, List<String> notKept) {
	private static final int LARGEST = 2_000_000;

	public WorkInHand {
		notKept = List.copyOf(notKept);
	}

	/** Looks at the folder. */
	public static WorkInHand of(Repo repo) throws NotDone {
		try (Git git = new Git(repo.git())) {
			InHand files = InHand.of(read(repo.folder()));
			StatusCommand ask = git.status();
			if (!repo.prefix().isEmpty()) {
				ask.addPath(repo.prefix());
			}
			Status status = ask.call();
			Set<String> all = new TreeSet<>(status.getUncommittedChanges());
			all.addAll(status.getUntracked());
			all.addAll(status.getConflicting());
			List<String> notKept = new ArrayList<>();
			all.forEach(path -> repo.inBook(path).filter(BookPart::is).ifPresent(notKept::add));
			return new WorkInHand(files, notKept);
		} catch (IOException | GitAPIException | RuntimeException e) {
			throw Faults.of(e, "look at the work in hand", repo);
		}
	}

	private static Map<String, byte[]> read(Path folder) throws IOException {
		Map<String, byte[]> files = new HashMap<>();
		List<Path> found = new ArrayList<>();
		try (Stream<Path> top = Files.list(folder)) {
			top.filter(Files::isRegularFile).forEach(found::add);
		}
		for (String part : BookPart.FOLDERS) {
			if (Files.isDirectory(folder.resolve(part))) {
				try (Stream<Path> below = Files.walk(folder.resolve(part), 3)) {
					below.filter(Files::isRegularFile).forEach(found::add);
				} catch (UncheckedIOException e) {
					throw e.getCause();
				}
			}
		}
		for (Path file : found) {
			String path = folder.relativize(file).toString().replace('\\', '/');
			if (BookPart.is(path) && Files.size(file) <= LARGEST) {
				files.put(path, Files.readAllBytes(file));
			}
		}
		return files;
	}

	/** Refuses when there is work that is not kept. @param doing what would overwrite it, to follow "before" */
	public void demandAllKept(String doing) throws NotDone {
		if (!notKept.isEmpty()) {
			throw new NotDone("There is work that is not kept yet, in " + shown() + ", and it would be overwritten.",
					"Keep it as an edition before you " + doing + ", or put those files elsewhere.");
		}
	}

	private String shown() {
		int most = 4;
		return String.join(", ", notKept.subList(0, Math.min(most, notKept.size())))
				+ (notKept.size() > most ? " and " + (notKept.size() - most) + " more files" : "");
	}
}
