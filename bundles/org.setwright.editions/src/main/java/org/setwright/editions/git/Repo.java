package org.setwright.editions.git;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryState;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/** A Git repository with the place of a book in it. Thread-safe for reading; close it when done. */
public final class Repo implements AutoCloseable {
	private final Repository repository;
	private final Path folder;
	private final String prefix;

	private Repo(Repository repository, Path folder, String prefix) {
		this.repository = repository;
		this.folder = folder;
		this.prefix = prefix;
	}

	/**
	 * Looks upwards for the repository a book lives in.
	 *
	 * @param book its folder
	 * @param ceilings folders at which to stop looking
	 * @return empty when it lives in none
	 */
	public static Optional<Repo> around(Path book, List<Path> ceilings) throws NotDone {
		try {
			Path real = book.toRealPath();
			for (Path at = real; at != null; at = at.getParent()) {
				if (Files.exists(at.resolve(Constants.DOT_GIT), LinkOption.NOFOLLOW_LINKS)) {
					return Optional.of(opened(at, real));
				} else if (ceilings.contains(at)) {
					return Optional.empty();
				}
			}
			return Optional.empty();
		} catch (IOException e) {
			throw new NotDone("The repository around " + book + " cannot be opened.", "Check with git status what is wrong with it.", e);
		}
	}

	private static Repo opened(Path workTree, Path book) throws IOException {
		FileRepositoryBuilder builder = new FileRepositoryBuilder();
		builder.addCeilingDirectory(workTree.getParent() == null ? null : workTree.getParent().toFile());
		builder.findGitDir(workTree.toFile()).setWorkTree(workTree.toFile()).setMustExist(true);
		return new Repo(withoutOwnPrograms(builder.build()), book, workTree.relativize(book).toString().replace(File.separatorChar, '/'));
	}

	/**
	 * A repository may name programs that every file goes through. Looking at a book from somebody else must not run them; those
	 * that the user's own Git names stay. Only in memory: {@link #noted} opens what may be written.
	 */
	private static Repository withoutOwnPrograms(Repository repository) {
		for (String filter : repository.getConfig().getSubsections("filter")) {
			repository.getConfig().unsetSection("filter", filter);
		}
		return repository;
	}

	/** @return the same repository with settings as they stand in its file, to be changed; to be closed */
	Repository noted() throws IOException {
		return new FileRepositoryBuilder().setGitDir(repository.getDirectory()).setMustExist(true).build();
	}

	/**
	 * Opens a repository without work in hand, for example in a hook of a server.
	 *
	 * @param directory the repository itself
	 * @param prefix where the book is in it, with forward slashes; empty for the top
	 */
	public static Repo at(Path directory, String prefix) throws NotDone {
		try {
			Path own = Files.isDirectory(directory.resolve(Constants.DOT_GIT)) ? directory.resolve(Constants.DOT_GIT) : directory;
			Repository opened = new FileRepositoryBuilder().setGitDir(own.toFile()).readEnvironment().setMustExist(true).build();
			return new Repo(withoutOwnPrograms(opened), directory.toAbsolutePath(), prefix.replaceAll("^/+|/+$", ""));
		} catch (IOException e) {
			throw new NotDone("There is no repository in " + directory + ".", "Name the folder that holds its objects and refs.", e);
		}
	}

	/** Starts a repository in the folder of a book, unless it lives in one already. */
	public static Repo start(Path book, List<Path> ceilings) throws NotDone {
		Optional<Repo> there = around(book, ceilings);
		if (there.isPresent()) {
			return there.get();
		}
		try (Git made = Git.init().setDirectory(book.toFile()).call()) {
			return around(book, ceilings).orElseThrow(() -> new NotDone("The repository was made and is gone again.", "Try once more."));
		} catch (GitAPIException | RuntimeException e) {
			throw Faults.of(e, "start a repository in " + book, null);
		}
	}

	/** @return the folder of the book, absolute */
	public Path folder() {
		return folder;
	}

	/** @return where the book is in the repository, with forward slashes; empty for the top */
	public String prefix() {
		return prefix;
	}

	/** @param path below the book @return below the top of the repository */
	String inRepository(String path) {
		return prefix.isEmpty() ? path : prefix + "/" + path;
	}

	/** @param path below the top of the repository @return below the book, or empty when it lies elsewhere */
	Optional<String> inBook(String path) {
		return prefix.isEmpty() ? Optional.of(path) : path.startsWith(prefix + "/") ? Optional.of(path.substring(prefix.length() + 1)) : Optional.empty();
	}

	Repository git() {
		return repository;
	}

	/** @return the line of work that is open, or empty when none is */
	public Optional<String> line() throws NotDone {
		try {
			Ref head = repository.exactRef(Constants.HEAD);
			return head != null && head.isSymbolic() ? Optional.of(Repository.shortenRefName(head.getTarget().getName())) : Optional.empty();
		} catch (IOException e) {
			throw Faults.of(e, "read which line of work is open", this);
		}
	}

	/** @return the commit at the tip of what is open, or empty when nothing was kept yet */
	public Optional<String> tip() throws NotDone {
		return commit(Constants.HEAD);
	}

	/** @param name of a branch, a tag, a commit or a part of its name, in Git's own words @return the commit meant, or empty */
	public Optional<String> commit(String name) throws NotDone {
		try {
			ObjectId found = repository.resolve(name + "^{commit}");
			return Optional.ofNullable(found).map(ObjectId::name);
		} catch (org.eclipse.jgit.errors.AmbiguousObjectException several) {
			throw new NotDone("More than one edition begins with " + name + ".", "Write more digits of it.", several);
		} catch (IOException | RuntimeException e) {
			if (e instanceof org.eclipse.jgit.errors.RevisionSyntaxException) {
				return Optional.empty();
			}
			throw Faults.of(e, "look up " + name, this);
		}
	}

	/** @return who works here, as Git is told to call them */
	public Who user() throws NotDone {
		Config config = repository.getConfig();
		String name = first(System.getenv("GIT_AUTHOR_NAME"), config.getString("user", null, "name"));
		String email = first(System.getenv("GIT_AUTHOR_EMAIL"), config.getString("user", null, "email"));
		if (name.isBlank() || email.isBlank()) {
			throw new NotDone("Git has not been told who you are.", "Type: git config --global user.name \"Your Name\", and the same for user.email.");
		}
		return new Who(name, email);
	}

	private static String first(String one, String other) {
		return one != null && !one.isBlank() ? one : other == null ? "" : other;
	}

	PersonIdent ident(Who who) {
		PersonIdent clock = new PersonIdent(repository);
		return new PersonIdent(who.name(), who.email(), clock.getWhenAsInstant(), ZoneId.of(clock.getZoneId().getId()));
	}

	/** Refuses while something begun with command-line Git is not finished. */
	void demandQuiet() throws NotDone {
		RepositoryState state = repository.getRepositoryState();
		if (state != RepositoryState.SAFE && state != RepositoryState.BARE) {
			throw new NotDone("Something begun with command-line Git is not finished here: " + state.getDescription().toLowerCase(java.util.Locale.ROOT) + ".",
					"Finish it there, or give it up (git status says how), then try again.");
		}
	}

	@Override
	public void close() {
		repository.close();
	}
}
