package org.setwright.editions.git;

import java.io.IOException;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.setwright.editions.kept.NotDone;

/** The files of a book in one commit. */
public final class TreeContent implements Content {
	private final Repo repo;
	private final Map<String, String> names;

	private TreeContent(Repo repo, Map<String, String> names) {
		this.repo = repo;
		this.names = Collections.unmodifiableMap(names);
	}

	/** @param commit its full name */
	public static TreeContent of(Repo repo, String commit) throws NotDone {
		Map<String, String> names = new TreeMap<>();
		try (RevWalk walk = new RevWalk(repo.git()); TreeWalk tree = new TreeWalk(repo.git())) {
			tree.addTree(walk.parseCommit(ObjectId.fromString(commit)).getTree());
			tree.setRecursive(true);
			if (!repo.prefix().isEmpty()) {
				tree.setFilter(org.eclipse.jgit.treewalk.filter.PathFilter.create(repo.prefix()));
			}
			while (tree.next()) {
				FileMode mode = tree.getFileMode(0);
				if (mode.equals(FileMode.REGULAR_FILE) || mode.equals(FileMode.EXECUTABLE_FILE)) {
					repo.inBook(tree.getPathString()).filter(BookPart::is).ifPresent(path -> names.put(path, tree.getObjectId(0).name()));
				}
			}
			return new TreeContent(repo, names);
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read edition " + commit.substring(0, 10), repo);
		}
	}

	@Override
	public Map<String, String> names() {
		return names;
	}

	@Override
	public byte[] bytes(String path) throws NotDone {
		try {
			return repo.git().open(ObjectId.fromString(names.get(path))).getBytes();
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read " + path + " of an earlier edition", repo);
		}
	}
}
