package org.setwright.editions.git;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.GpgConfig;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.TagBuilder;
import org.eclipse.jgit.revwalk.RevObject;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.util.SystemReader;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/**
 * An annotated tag on a commit.
 *
 * @param name without what stands before every tag
 * @param object its own name in Git
 * @param commit the commit it marks
 * @param message without the signature
 * @param signature whether it is signed by a key, and whether that could be checked
 */
public record Tag(String name, String object, String commit, Who by, OffsetDateTime on, String message, Signature signature) {

	private static final Map<String, String> USUAL = Map.of("gpg.program", "gpg", "gpg.openpgp.program", "gpg", "gpg.ssh.program", "ssh-keygen",
			"gpg.x509.program", "gpgsm");

	/** How a tag stands as a proof of who made it. */
	public enum Signature {
		/** No key signed it. */
		NONE("not signed with a key"),
		/** A key signed it that the user's Git trusts. */
		GOOD("signed with a key that Git accepts"),
		/** A key signed it, and it does not hold, or the user's Git does not know the key. */
		NOT_ACCEPTED("signed with a key that Git does not accept"),
		/** A key signed it, and there is no Git program here to check it. */
		NOT_CHECKED("signed with a key that could not be checked here");

		private final String words;

		Signature(String words) {
			this.words = words;
		}

		/** @return for people */
		public String words() {
			return words;
		}
	}

	/** @param prefix of the names wanted @return the commit that each such tag marks, by name; who made it is not looked at, which takes time */
	public static Map<String, String> marked(Repo repo, String prefix) throws NotDone {
		try (RevWalk walk = new RevWalk(repo.git())) {
			Map<String, String> marked = new TreeMap<>();
			for (Ref ref : repo.git().getRefDatabase().getRefsByPrefix(Constants.R_TAGS + prefix)) {
				RevObject commit = walk.peel(walk.parseAny(ref.getObjectId()));
				if (commit.getType() == Constants.OBJ_COMMIT) {
					marked.put(ref.getName().substring(Constants.R_TAGS.length()), commit.name());
				}
			}
			return marked;
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read what is signed", repo);
		}
	}

	/** @param prefix of the names wanted @return all such tags, by name */
	public static List<Tag> all(Repo repo, String prefix) throws NotDone {
		try (RevWalk walk = new RevWalk(repo.git())) {
			List<Tag> tags = new ArrayList<>();
			for (Ref ref : repo.git().getRefDatabase().getRefsByPrefix(Constants.R_TAGS + prefix)) {
				read(repo, walk, ref.getObjectId(), ref.getName().substring(Constants.R_TAGS.length())).ifPresent(tags::add);
			}
			return tags;
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read who signed", repo);
		}
	}

	/** @param objects names of tags that are not listed yet, as in a hook of a server; others are passed over */
	public static List<Tag> arriving(Repo repo, Collection<String> objects) throws NotDone {
		try (RevWalk walk = new RevWalk(repo.git())) {
			List<Tag> tags = new ArrayList<>();
			for (String object : objects) {
				read(repo, walk, ObjectId.fromString(object), "").ifPresent(tags::add);
			}
			return tags;
		} catch (IOException | RuntimeException e) {
			throw Faults.of(e, "read who signed", repo);
		}
	}

	private static Optional<Tag> read(Repo repo, RevWalk walk, ObjectId id, String listed) throws IOException {
		RevObject object = walk.parseAny(id);
		if (!(object instanceof RevTag tag) || tag.getTaggerIdent() == null) {
			return Optional.empty();
		}
		RevObject marked = walk.peel(tag);
		if (marked.getType() != Constants.OBJ_COMMIT) {
			return Optional.empty();
		}
		PersonIdent by = tag.getTaggerIdent();
		byte[] raw = tag.getRawGpgSignature();
		String message = tag.getFullMessage();
		int key = message.indexOf("-----BEGIN ");
		return Optional.of(new Tag(listed.isEmpty() ? tag.getTagName() : listed, tag.name(), marked.name(), new Who(by.getName(), by.getEmailAddress()),
				by.getWhenAsInstant().atZone(by.getZoneId()).toOffsetDateTime(), (key < 0 ? message : message.substring(0, key)).strip(),
				raw == null && key < 0 ? Signature.NONE : checked(repo, tag.name())));
	}

	/** Looking at who signed must not run a program that the repository itself names: only those of the user's own Git check keys. */
	private static Signature checked(Repo repo, String tag) {
		List<String> words = new ArrayList<>(List.of("git", "--git-dir=" + repo.git().getDirectory()));
		USUAL.forEach((setting, usual) -> words.addAll(List.of("-c", setting + "=" + ofTheUser(setting).orElse(usual))));
		words.addAll(List.of("verify-tag", tag));
		try {
			return Programs.run(words, new byte[0], null).exit() == 0 ? Signature.GOOD : Signature.NOT_ACCEPTED;
		} catch (IOException noGitHere) {
			return Signature.NOT_CHECKED;
		}
	}

	private static Optional<String> ofTheUser(String setting) {
		int last = setting.lastIndexOf('.');
		String[] section = setting.substring(0, last).split("\\.", 2);
		try {
			return Optional.ofNullable(SystemReader.getInstance().getUserConfig()
					.getString(section[0], section.length > 1 ? section[1] : null, setting.substring(last + 1)));
		} catch (IOException | ConfigInvalidException unreadable) {
			return Optional.empty();
		}
	}

	/** Makes an annotated tag, signed with a key where the user's Git is set up for it. A name that is taken is refused. */
	public static Tag make(Repo repo, String name, String commit, String message, Who by) throws NotDone {
		try (ObjectInserter inserter = repo.git().newObjectInserter(); RevWalk walk = new RevWalk(repo.git())) {
			TagBuilder builder = new TagBuilder();
			builder.setTag(name);
			builder.setObjectId(walk.parseCommit(ObjectId.fromString(commit)));
			builder.setTagger(repo.ident(by));
			builder.setMessage(message);
			if (OwnSigner.setUp(repo)) {
				GpgConfig config = new GpgConfig(repo.git().getConfig());
				OwnSigner.of(repo).signObject(repo.git(), config, builder, repo.ident(by), config.getSigningKey(), null);
			}
			ObjectId made = inserter.insert(builder);
			inserter.flush();
			RefUpdate update = repo.git().updateRef(Constants.R_TAGS + name);
			update.setExpectedOldObjectId(ObjectId.zeroId());
			update.setNewObjectId(made);
			if (update.update() != RefUpdate.Result.NEW) {
				throw new NotDone("The edition could not be signed, because the mark " + name + " is being made by somebody else.",
						"Look who signed it, then try again.");
			}
			return read(repo, walk, made, name).orElseThrow();
		} catch (IOException | org.eclipse.jgit.api.errors.GitAPIException | RuntimeException e) {
			throw Faults.of(e, "sign the edition", repo);
		}
	}
}
