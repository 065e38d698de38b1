package org.setwright.editions.git;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.setwright.editions.kept.NotDone;

/** Lines of work: Git's branches, for trials beside the practice that is in force. */
public final class Lines {
	private Lines() {
	}

	/** @return the commit at the tip of every line of this repository, by its name */
	public static Map<String, String> all(Repo repo) throws NotDone {
		return tips(repo, Constants.R_HEADS);
	}

	/** @return the tip of every line of other places as it was when last fetched, by its name, for example {@code origin/main} */
	public static Map<String, String> elsewhere(Repo repo) throws NotDone {
		return tips(repo, Constants.R_REMOTES);
	}

	private static Map<String, String> tips(Repo repo, String where) throws NotDone {
		try {
			Map<String, String> tips = new TreeMap<>();
			for (Ref ref : repo.git().getRefDatabase().getRefsByPrefix(where)) {
				if (!ref.isSymbolic() && ref.getObjectId() != null) {
					tips.put(ref.getName().substring(where.length()), ref.getObjectId().name());
				}
			}
			return tips;
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "list the lines of work", repo);
		}
	}

	/** Begins a line here and goes over to it; work in hand comes along untouched. @param from its first commit; null for what is open */
	public static void begin(Repo repo, String name, String from) throws NotDone {
		repo.demandQuiet();
		String full = Constants.R_HEADS + name;
		if (!Repository.isValidRefName(full) || name.startsWith("-")) {
			String right = Repository.normalizeBranchName(name);
			throw new NotDone("\"" + name + "\" cannot be the name of a line of work.",
					right.isEmpty() ? "Write a word of letters, digits and dashes." : "Write for example " + right + ".");
		} else if (all(repo).containsKey(name)) {
			throw new NotDone("There is a line of work called " + name + " already.", "Give this one another name, or go over to that one.");
		}
		try (Git git = new Git(repo.git())) {
			git.checkout().setCreateBranch(true).setName(name).setStartPoint(from == null ? Constants.HEAD : from).call();
		} catch (GitAPIException | RuntimeException e) {
			throw Faults.of(e, "begin the line " + name, repo);
		}
	}

	/** Goes over to another line. Refuses, and changes nothing, where that would overwrite work that is not kept. */
	public static void open(Repo repo, String name) throws NotDone {
		repo.demandQuiet();
		if (!all(repo).containsKey(name)) {
			throw new NotDone("There is no line of work called " + name + ".", "There are: " + String.join(", ", all(repo).keySet()) + ".");
		}
		try (Git git = new Git(repo.git())) {
			git.checkout().setName(name).call();
		} catch (GitAPIException | RuntimeException e) {
			throw Faults.of(e, "go over to " + name, repo);
		}
	}
}
