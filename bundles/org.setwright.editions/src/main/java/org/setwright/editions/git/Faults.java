package org.setwright.editions.git;

import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.ZipException;
import org.eclipse.jgit.api.errors.AbortedByHookException;
import org.eclipse.jgit.api.errors.CheckoutConflictException;
import org.eclipse.jgit.api.errors.ConcurrentRefUpdateException;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.ObjectWritingException;
import org.eclipse.jgit.errors.UnpackException;
import org.setwright.editions.kept.NotDone;

/** Says in plain words why the library could not do something, and what to do. */
final class Faults {
	private static final String AS_BEFORE = "Nothing that was kept is lost, and your files are as they were.";
	private static final List<String> FULL = List.of("no space left", "file too large", "disk quota", "not enough space", "enospc");

	private Faults() {
	}

	/**
	 * @param doing what was tried, to follow "could not"
	 * @param repo null when there is none yet
	 * @return {@code failure} said plainly; a {@link NotDone} as it is
	 */
	static NotDone of(Throwable failure, String doing, Repo repo) {
		String said = failure.getMessage() == null ? "the reason is not known" : failure.getMessage().strip().replaceAll("\\s+", " ");
		return anyKnown(failure, doing, repo).orElseGet(() -> new NotDone("Setwright could not " + doing + " (" + said + ").",
				AS_BEFORE + " See what git status and git fsck say.", failure));
	}

	/** @param repo null when there is none yet @return {@code failure} said plainly, when anything in it is known; a {@link NotDone} as it is */
	static Optional<NotDone> anyKnown(Throwable failure, String doing, Repo repo) {
		for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
			if (cause instanceof NotDone told) {
				return Optional.of(told);
			}
			Optional<NotDone> known = known(cause, doing, repo);
			if (known.isPresent()) {
				return known;
			}
		}
		return Optional.empty();
	}

	private static Optional<NotDone> known(Throwable cause, String doing, Repo repo) {
		String words = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
		if (FULL.stream().anyMatch(words::contains)) {
			return told("There is no room left on the disk to " + doing + ".", AS_BEFORE + " Make room, then try again.", cause);
		} else if (cause instanceof LockFailedException locked) {
			return Optional.of(locked(new File(locked.getFile() + ".lock"), doing, cause));
		} else if (cause instanceof ConcurrentRefUpdateException || words.contains("lock_failure")) {
			return Optional.of(lockedRef(repo, doing, cause));
		} else if (cause instanceof CorruptObjectException || cause instanceof MissingObjectException || cause instanceof ZipException
				|| cause instanceof DataFormatException || cause instanceof EOFException) {
			return told("A part of the history cannot be read, so Setwright could not " + doing + " (" + cause.getMessage() + ").",
					"The files you work on are not touched. Fetch the history anew from a colleague or server, or clone it and copy your files over; git "
							+ "fsck names what is damaged.",
					cause);
		} else if (cause instanceof AbortedByHookException hook) {
			return told("A check that this repository runs said no (" + hook.getHookStdErr().strip().replaceAll("\\s+", " ") + ").",
					"Mend what it complains of, then try again.", cause);
		} else if (cause instanceof CheckoutConflictException conflict) {
			return told("Work that is not kept would be overwritten in " + String.join(", ", conflict.getConflictingPaths()) + ".",
					"Keep it as an edition first, or put it elsewhere.", cause);
		} else if (cause instanceof ObjectWritingException || cause instanceof UnpackException) {
			return told("The repository cannot be written, so Setwright could not " + doing + ".", AS_BEFORE + " Check the disk, and who may write there.",
					cause);
		}
		return cause instanceof IOException && words.contains("permission denied")
				? told("You may not write there, so Setwright could not " + doing + ".", AS_BEFORE + " Ask whoever owns the folder.", cause) : Optional.empty();
	}

	private static NotDone lockedRef(Repo repo, String doing, Throwable cause) {
		if (repo != null) {
			File directory = repo.git().getDirectory();
			List<String> names = new java.util.ArrayList<>(List.of("HEAD.lock", "packed-refs.lock"));
			try {
				names.add(repo.git().getFullBranch() + ".lock");
			} catch (IOException unreadable) {
				names.add("refs/heads.lock");
			}
			for (String name : names) {
				for (File place : List.of(directory, repo.git().getCommonDirectory())) {
					if (new File(place, name).exists()) {
						return locked(new File(place, name), doing, cause);
					}
				}
			}
		}
		return new NotDone("Somebody else kept an edition at the same moment, so Setwright did not " + doing + ".",
				AS_BEFORE + " Look at what is new, then try again.", cause);
	}

	private static NotDone locked(File lock, String doing, Throwable cause) {
		long minutes = lock.exists() ? (System.currentTimeMillis() - lock.lastModified()) / 60_000 : 0;
		return new NotDone("Another program is at work in this repository, or one was cut off there" + (minutes > 0 ? " " + minutes + " minutes ago" : "")
				+ ", so Setwright could not " + doing + ".",
				AS_BEFORE + " If no other Setwright or Git is running, delete the file " + lock + " and try again.", cause);
	}

	private static Optional<NotDone> told(String what, String remedy, Throwable cause) {
		return Optional.of(new NotDone(what, remedy, cause));
	}
}
