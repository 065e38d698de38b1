package org.setwright.editions.git;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.api.AddCommand;
import org.eclipse.jgit.api.CommitCommand;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.ConcurrentRefUpdateException;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.revwalk.RevCommit;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/** Keeps the work in hand as a commit. Only the files of the book go into it, whatever else is changed or staged. */
public final class Keeping {
	private Keeping() {
	}

	/**
	 * @param paths below the book, each changed, new or gone; not empty
	 * @param message not blank
	 * @param by its author
	 * @return the full name of the commit
	 */
	public static String commit(Repo repo, List<String> paths, String message, Who by) throws NotDone {
		repo.demandQuiet();
		demandALine(repo);
		Optional<String> before = repo.tip();
		try (Git git = new Git(repo.git())) {
			List<String> there = new ArrayList<>();
			List<String> gone = new ArrayList<>();
			paths.forEach(p -> (Files.exists(repo.folder().resolve(p)) ? there : gone).add(repo.inRepository(p)));
			add(git, there, false);
			add(git, gone, true);
			CommitCommand commit = git.commit().setMessage(message).setAuthor(repo.ident(by)).setCommitter(repo.ident(by));
			paths.forEach(p -> commit.setOnly(repo.inRepository(p)));
			OwnSigner.use(repo, commit);
			ByteArrayOutputStream said = new ByteArrayOutputStream();
			commit.setHookOutputStream(new PrintStream(said, true, StandardCharsets.UTF_8))
					.setHookErrorStream(new PrintStream(said, true, StandardCharsets.UTF_8));
			RevCommit made = commit.call();
			if (before.isPresent() && !made.getParent(0).name().equals(before.get())) {
				stepBack(repo, made);
				throw new ConcurrentRefUpdateException("", null, RefUpdate.Result.LOCK_FAILURE);
			}
			return made.name();
		} catch (GitAPIException | IOException | RuntimeException e) {
			throw Faults.of(e, "keep the edition", repo);
		}
	}

	/** What was made stands on an edition that nobody had looked at, and might undo it: the line goes back to that edition. */
	private static void stepBack(Repo repo, RevCommit made) throws IOException {
		RefUpdate back = repo.git().updateRef(Constants.HEAD);
		back.setExpectedOldObjectId(made);
		back.setNewObjectId(made.getParent(0));
		back.setForceUpdate(true);
		back.setRefLogMessage("keep: stepped back, somebody else kept an edition", false);
		back.forceUpdate();
	}

	private static void add(Git git, List<String> paths, boolean gone) throws GitAPIException {
		if (!paths.isEmpty()) {
			AddCommand add = git.add().setUpdate(gone);
			paths.forEach(add::addFilepattern);
			add.call();
		}
	}

	static void demandALine(Repo repo) throws NotDone {
		if (repo.line().isEmpty()) {
			throw new NotDone("An earlier edition is open, and no line of work, so what is kept here would soon be lost from sight.",
					"Begin a line of work from here with trial NAME, then keep it.");
		}
	}
}
