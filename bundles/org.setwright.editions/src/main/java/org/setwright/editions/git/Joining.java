package org.setwright.editions.git;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheCheckout;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.merge.MergeAlgorithm;
import org.eclipse.jgit.merge.MergeFormatter;
import org.eclipse.jgit.merge.MergeResult;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/**
 * Two commits to be joined, with those they both came from. Immutable.
 *
 * @param ours the tip of the open line
 * @param bases the newest commits both came from; several when the lines have crossed before
 * @param files every file that the two sides do not agree on, by its path below the top of the repository
 */
public record Joining(String ours, String theirs, List<String> bases, Map<String, Sides> files) {
	public Joining {
		bases = List.copyOf(bases);
	}

	/** One file on all sides; each name is empty where there is no such file. @param sameBase whether all bases agree on it */
	public record Sides(Optional<String> base, Optional<String> ours, Optional<String> theirs, boolean sameBase) {
		/** @return whether only the other side changed it */
		public boolean onlyTheirs() {
			return sameBase && base.equals(ours);
		}

		/** @return whether only this side changed it */
		public boolean onlyOurs() {
			return sameBase && base.equals(theirs);
		}
	}

	private record Entry(FileMode mode, ObjectId id) {
	}

	/** @return whether the other side has nothing that is not here */
	public boolean nothingNew() {
		return bases.contains(theirs);
	}

	/** @return whether this side has nothing that is not there, so that its line can simply go on to the other's tip */
	public boolean goesOn() {
		return bases.contains(ours);
	}

	/** @param theirs a commit to be joined to the open line */
	public static Joining of(Repo repo, String theirs) throws NotDone {
		String ours = repo.tip().orElseThrow(() -> new NotDone("Nothing has been kept here yet.", "Keep a first edition."));
		try (RevWalk walk = new RevWalk(repo.git())) {
			RevCommit one = walk.parseCommit(ObjectId.fromString(ours));
			RevCommit two = walk.parseCommit(ObjectId.fromString(theirs));
			walk.setRevFilter(RevFilter.MERGE_BASE);
			walk.markStart(one);
			walk.markStart(two);
			List<RevCommit> bases = new ArrayList<>();
			for (RevCommit base : walk) {
				bases.add(base);
			}
			if (bases.isEmpty()) {
				throw new NotDone("The two lines have nothing in common, so they cannot be joined.", "Check that both belong to the same book.");
			}
			return new Joining(ours, theirs, bases.stream().map(RevCommit::name).toList(), sides(repo, one, two, bases));
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "compare the two lines", repo);
		}
	}

	private static Map<String, Sides> sides(Repo repo, RevCommit one, RevCommit two, List<RevCommit> bases) throws IOException {
		Map<String, Entry> ours = entries(repo, one);
		Map<String, Entry> theirs = entries(repo, two);
		List<Map<String, Entry>> before = new ArrayList<>();
		for (RevCommit base : bases) {
			before.add(entries(repo, base));
		}
		Set<String> paths = new TreeSet<>(ours.keySet());
		paths.addAll(theirs.keySet());
		Map<String, Sides> sides = new TreeMap<>();
		for (String path : paths) {
			if (!java.util.Objects.equals(ours.get(path), theirs.get(path))) {
				Set<Optional<String>> was = new LinkedHashSet<>();
				before.forEach(b -> was.add(name(b, path)));
				sides.put(path, new Sides(was.iterator().next(), name(ours, path), name(theirs, path), was.size() == 1));
			}
		}
		return sides;
	}

	private static Optional<String> name(Map<String, Entry> entries, String path) {
		return Optional.ofNullable(entries.get(path)).map(e -> e.id().name());
	}

	private static Map<String, Entry> entries(Repo repo, RevCommit commit) throws IOException {
		Map<String, Entry> entries = new TreeMap<>();
		try (TreeWalk tree = new TreeWalk(repo.git())) {
			tree.addTree(commit.getTree());
			tree.setRecursive(true);
			while (tree.next()) {
				entries.put(tree.getPathString(), new Entry(tree.getFileMode(0), tree.getObjectId(0)));
			}
		}
		return entries;
	}

	/** @return the bytes that {@code name}, of some side, stands for */
	public static byte[] bytes(Repo repo, String name) throws NotDone {
		try {
			return repo.git().open(ObjectId.fromString(name)).getBytes();
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read a file of the other line", repo);
		}
	}

	/** @return the three texts joined line by line, or empty when both sides changed the same lines */
	public static Optional<byte[]> lines(byte[] base, byte[] ours, byte[] theirs) {
		MergeResult<RawText> joined = new MergeAlgorithm().merge(RawTextComparator.DEFAULT, new RawText(base), new RawText(ours), new RawText(theirs));
		if (joined.containsConflicts() || RawText.isBinary(ours) || RawText.isBinary(theirs)) {
			return Optional.empty();
		}
		ByteArrayOutputStream text = new ByteArrayOutputStream();
		try {
			new MergeFormatter().formatMerge(text, joined, "", "", "", java.nio.charset.StandardCharsets.UTF_8);
		} catch (IOException impossible) {
			throw new java.io.UncheckedIOException(impossible);
		}
		return Optional.of(text.toByteArray());
	}

	/** Lets the open line go on to the other's tip. */
	public void goOn(Repo repo) throws NotDone {
		repo.demandQuiet();
		Keeping.demandALine(repo);
		try (RevWalk walk = new RevWalk(repo.git())) {
			RevCommit tip = walk.parseCommit(ObjectId.fromString(theirs));
			moveTo(repo, walk.parseCommit(ObjectId.fromString(ours)), tip, "join: goes on");
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "go on to the other line's tip", repo);
		}
	}

	/**
	 * Joins the two with a commit that has both as parents.
	 *
	 * @param whole the bytes of files that neither side has so, by path below the top of the repository
	 * @param theirOwn paths that come to what they are on the other side; all others stay as they are on this side
	 * @return the full name of the new commit
	 */
	public String commit(Repo repo, Map<String, byte[]> whole, Set<String> theirOwn, String message, Who by) throws NotDone {
		repo.demandQuiet();
		Keeping.demandALine(repo);
		try (RevWalk walk = new RevWalk(repo.git()); ObjectInserter inserter = repo.git().newObjectInserter(); ObjectReader reader = repo.git()
				.newObjectReader()) {
			RevCommit one = walk.parseCommit(ObjectId.fromString(ours));
			RevCommit two = walk.parseCommit(ObjectId.fromString(theirs));
			DirCache joined = DirCache.newInCore();
			DirCacheBuilder builder = joined.builder();
			builder.addTree(new byte[0], DirCacheEntry.STAGE_0, reader, one.getTree());
			builder.finish();
			DirCacheEditor editor = joined.editor();
			Map<String, Entry> there = entries(repo, two);
			for (String path : theirOwn) {
				Entry entry = there.get(path);
				editor.add(entry == null ? new DirCacheEditor.DeletePath(path) : put(path, entry.mode(), entry.id()));
			}
			for (Map.Entry<String, byte[]> file : whole.entrySet()) {
				editor.add(put(file.getKey(), FileMode.REGULAR_FILE, inserter.insert(Constants.OBJ_BLOB, file.getValue())));
			}
			editor.finish();
			CommitBuilder commit = new CommitBuilder();
			commit.setTreeId(joined.writeTree(inserter));
			commit.setParentIds(one, two);
			commit.setAuthor(repo.ident(by));
			commit.setCommitter(repo.ident(by));
			commit.setMessage(message);
			commit.setEncoding(java.nio.charset.StandardCharsets.UTF_8);
			OwnSigner.use(repo, commit, by);
			ObjectId made = inserter.insert(commit);
			inserter.flush();
			moveTo(repo, one, walk.parseCommit(made), "join: " + message.lines().findFirst().orElse(""));
			return made.name();
		} catch (IOException | org.eclipse.jgit.api.errors.GitAPIException | RuntimeException e) {
			throw Faults.of(e, "join the two lines", repo);
		}
	}

	private static DirCacheEditor.PathEdit put(String path, FileMode mode, ObjectId id) {
		return new DirCacheEditor.PathEdit(path) {
			@Override
			public void apply(DirCacheEntry entry) {
				entry.setFileMode(mode);
				entry.setObjectId(id);
			}
		};
	}

	/** Files first, then the line: cut off in between, the files show as work that is not kept, and nothing is lost. */
	private static void moveTo(Repo repo, RevCommit from, RevCommit to, String note) throws IOException, NotDone {
		checkout(repo, from, to);
		RefUpdate update = repo.git().updateRef(Constants.HEAD);
		update.setExpectedOldObjectId(from);
		update.setNewObjectId(to);
		update.setRefLogMessage(note, false);
		RefUpdate.Result result = update.update();
		if (result != RefUpdate.Result.FAST_FORWARD && result != RefUpdate.Result.NEW && result != RefUpdate.Result.NO_CHANGE) {
			checkout(repo, to, from);
			throw Faults.of(new IOException(result.name()), "join the two lines", repo);
		}
	}

	private static void checkout(Repo repo, RevCommit from, RevCommit to) throws IOException, NotDone {
		DirCache index = repo.git().lockDirCache();
		try {
			DirCacheCheckout checkout = new DirCacheCheckout(repo.git(), from.getTree(), index, to.getTree());
			checkout.setFailOnConflict(true);
			checkout.checkout();
		} catch (org.eclipse.jgit.errors.CheckoutConflictException e) {
			throw new NotDone("Work that is not kept would be overwritten in " + String.join(", ", e.getConflictingFiles()) + ".",
					"Keep it as an edition first, or put it elsewhere.", e);
		} finally {
			index.unlock();
		}
	}
}
