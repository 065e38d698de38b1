package org.setwright.editions.git;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevSort;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.setwright.editions.kept.EditionId;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/**
 * The editions of a book that lead to some commits. A commit that leaves rules, tables, jobs and details of the book as they
 * were is no edition of its own. Immutable.
 *
 * @param editions every edition before those it came from, newest first where that leaves a choice
 * @param byCommit the edition that each commit holds; commits without the book are missing
 */
public record EditionLog(List<Kept> editions, Map<String, EditionId> byCommit) {
	public EditionLog {
		editions = List.copyOf(editions);
		byCommit = Collections.unmodifiableMap(byCommit);
	}

	/** @return the edition, or empty when it is none of these */
	public Optional<Kept> edition(EditionId id) {
		return editions.stream().filter(e -> e.id().equals(id)).findFirst();
	}

	/** @return the edition that {@code commit} holds */
	public Optional<Kept> at(String commit) {
		return Optional.ofNullable(byCommit.get(commit)).flatMap(this::edition);
	}

	/** @return {@code id} and everything it came from, in the order of this log */
	public List<Kept> leadingTo(EditionId id) {
		Set<EditionId> wanted = new LinkedHashSet<>(Set.of(id));
		List<Kept> found = new ArrayList<>();
		for (Kept edition : editions) {
			if (wanted.contains(edition.id())) {
				found.add(edition);
				wanted.addAll(edition.parents());
			}
		}
		return found;
	}

	/** @param commits where to start; may be empty */
	public static EditionLog of(Repo repo, Collection<String> commits) throws NotDone {
		try (RevWalk walk = new RevWalk(repo.git()); ObjectReader reader = repo.git().newObjectReader()) {
			for (String commit : new LinkedHashSet<>(commits)) {
				walk.markStart(walk.parseCommit(ObjectId.fromString(commit)));
			}
			walk.sort(RevSort.COMMIT_TIME_DESC);
			walk.sort(RevSort.TOPO, true);
			List<RevCommit> all = new ArrayList<>();
			for (RevCommit commit : walk) {
				all.add(commit);
			}
			return new Reading(reader, repo.prefix()).log(all);
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read the history", repo);
		}
	}

	/** One reading of the history. */
	private static final class Reading {
		private final ObjectReader reader;
		private final String prefix;
		private final Map<ObjectId, String> contentOfTree = new HashMap<>();
		private final Map<String, EditionId> byCommit = new HashMap<>();
		private final Map<EditionId, String> contentOf = new HashMap<>();

		private Reading(ObjectReader reader, String prefix) {
			this.reader = reader;
			this.prefix = prefix;
		}

		private EditionLog log(List<RevCommit> childrenFirst) throws IOException {
			List<Kept> editions = new ArrayList<>();
			for (int i = childrenFirst.size() - 1; i >= 0; i--) {
				RevCommit commit = childrenFirst.get(i);
				String content = content(commit.getTree());
				Set<EditionId> parents = new LinkedHashSet<>();
				EditionId same = null;
				for (RevCommit parent : commit.getParents()) {
					EditionId before = byCommit.get(parent.name());
					if (before != null && contentOf.get(before).equals(content)) {
						same = same == null ? before : same;
					} else if (before != null) {
						parents.add(before);
					}
				}
				if (same != null) {
					byCommit.put(commit.name(), same);
				} else if (!content.isEmpty()) {
					EditionId id = new EditionId(commit.name());
					byCommit.put(commit.name(), id);
					contentOf.put(id, content);
					editions.add(kept(id, parents, commit, content));
				}
			}
			Collections.reverse(editions);
			return new EditionLog(editions, byCommit);
		}

		private static Kept kept(EditionId id, Set<EditionId> parents, RevCommit commit, String content) {
			PersonIdent author = commit.getAuthorIdent();
			OffsetDateTime on = author.getWhenAsInstant().atZone(author.getZoneId()).toOffsetDateTime();
			return new Kept(id, List.copyOf(parents), new Who(author.getName(), author.getEmailAddress()), on, commit.getFullMessage(), content);
		}

		private String content(ObjectId tree) throws IOException {
			String known = contentOfTree.get(tree);
			if (known == null) {
				known = read(tree);
				contentOfTree.put(tree.copy(), known);
			}
			return known;
		}

		private String read(ObjectId tree) throws IOException {
			ObjectId book = tree;
			if (!prefix.isEmpty()) {
				try (TreeWalk to = TreeWalk.forPath(reader, prefix, tree)) {
					if (to == null || !to.isSubtree()) {
						return "";
					}
					book = to.getObjectId(0);
				}
			}
			StringBuilder held = new StringBuilder();
			CanonicalTreeParser parser = new CanonicalTreeParser(null, reader, book);
			for (; !parser.eof(); parser.next(1)) {
				if (BookPart.counts(parser.getEntryPathString())) {
					held.append(parser.getEntryPathString()).append(' ').append(parser.getEntryObjectId().name()).append('\n');
				}
			}
			return held.indexOf("book.yaml ") < 0 ? "" : digest(held.toString());
		}
	}

	private static String digest(String text) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
		} catch (NoSuchAlgorithmException everyJdkHasIt) {
			throw new IllegalStateException(everyJdkHasIt);
		}
	}
}
