package org.setwright.editions.joining;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.setwright.book.ShopSettings;
import org.setwright.editions.git.BookPart;
import org.setwright.editions.git.InHand;
import org.setwright.editions.git.Joining;
import org.setwright.editions.git.Repo;
import org.setwright.editions.git.TreeContent;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.written.RuleFiles;
import org.setwright.editions.written.WrittenRule;

/**
 * How two lines of work come together. Nothing on the disk changes until the plan is kept, so there is never half of it. Immutable.
 *
 * @param name of the other line, for people
 * @param whole the bytes of files that come from both sides, by path below the top of the repository
 * @param theirOwn paths that come to what they are on the other side
 * @param choices what was decided so far: the text for a conflict, empty to leave it out
 * @param conflicts what a person still has to decide
 */
public record JoinPlan(String name, Joining joining, Map<String, byte[]> whole, Set<String> theirOwn, Map<String, Optional<String>> choices,
		List<Conflict> conflicts) {
	public JoinPlan {
		whole = Collections.unmodifiableMap(whole);
		theirOwn = Collections.unmodifiableSet(theirOwn);
		choices = Map.copyOf(choices);
		conflicts = List.copyOf(conflicts);
	}

	/** @param choices as of an earlier plan, may be empty @throws NotDone when lines cannot be joined here at all */
	public static JoinPlan of(Repo repo, String name, Joining joining, Map<String, Optional<String>> choices) throws NotDone {
		Map<String, byte[]> whole = new TreeMap<>();
		Set<String> theirOwn = new TreeSet<>();
		List<Conflict> conflicts = new ArrayList<>();
		for (Map.Entry<String, Joining.Sides> file : joining.files().entrySet()) {
			if (file.getValue().onlyTheirs()) {
				theirOwn.add(file.getKey());
			} else if (!file.getValue().onlyOurs()) {
				new OneFile(repo, file.getKey(), file.getValue(), choices).join(whole, theirOwn, conflicts);
			}
		}
		JoinPlan plan = new JoinPlan(name, joining, whole, theirOwn, choices, conflicts);
		if (conflicts.isEmpty()) {
			demandEachRuleOnce(plan.content(repo));
		}
		return plan;
	}

	/** @param text what {@code conflict} comes to; empty to leave it out @return the plan with that decided */
	public JoinPlan decided(Repo repo, Conflict conflict, Optional<String> text) throws NotDone {
		Map<String, Optional<String>> more = new HashMap<>(choices);
		more.put(conflict.what(), text);
		return of(repo, name, joining, more);
	}

	/** @return the files of the book as they will be; conflicts as they are here */
	public InHand content(Repo repo) throws NotDone {
		Map<String, byte[]> files = new TreeMap<>();
		TreeContent ours = TreeContent.of(repo, joining.ours());
		for (String path : ours.names().keySet()) {
			files.put(path, ours.bytes(path));
		}
		TreeContent theirs = TreeContent.of(repo, joining.theirs());
		String prefix = repo.prefix().isEmpty() ? "" : repo.prefix() + "/";
		for (String path : theirOwn) {
			if (path.startsWith(prefix)) {
				String inBook = path.substring(prefix.length());
				if (theirs.names().containsKey(inBook)) {
					files.put(inBook, theirs.bytes(inBook));
				} else {
					files.remove(inBook);
				}
			}
		}
		whole.forEach((path, bytes) -> {
			if (path.startsWith(prefix)) {
				files.put(path.substring(prefix.length()), bytes);
			}
		});
		return InHand.of(files);
	}

	private static void demandEachRuleOnce(InHand content) throws NotDone {
		Map<String, String> seen = new HashMap<>();
		for (String path : content.names().keySet()) {
			if (path.startsWith("rules/") && path.endsWith(".drl")) {
				for (WrittenRule rule : RuleFiles.rules(path, new String(content.bytes(path), StandardCharsets.UTF_8))) {
					String other = seen.putIfAbsent(rule.name(), path);
					if (other != null) {
						throw new NotDone("Joined, the rule " + rule.shown() + " would stand twice, in " + other + " and " + path + ".",
								"Move or rename it on one of the lines, keep that, then join again.");
					}
				}
			}
		}
	}

	/** One file that both sides changed. */
	private record OneFile(Repo repo, String path, Joining.Sides sides, Map<String, Optional<String>> choices) {

		void join(Map<String, byte[]> whole, Set<String> theirOwn, List<Conflict> conflicts) throws NotDone {
			Optional<String> inBook = inBook();
			boolean everywhere = sides.ours().isPresent() && sides.theirs().isPresent();
			if (inBook.isPresent() && everywhere && sides.sameBase() && holdsParts(inBook.get())) {
				Optional<RuleFileJoin.Joined> joined = parts(inBook.get());
				if (joined.isPresent()) {
					conflicts.addAll(joined.get().conflicts());
					whole.put(path, joined.get().text().getBytes(StandardCharsets.UTF_8));
					return;
				}
			} else if (everywhere && sides.sameBase()) {
				Optional<byte[]> lines = Joining.lines(bytes(sides.base()), bytes(sides.ours()), bytes(sides.theirs()));
				if (lines.isPresent()) {
					whole.put(path, lines.get());
					return;
				}
			}
			if (inBook.isEmpty()) {
				throw new NotDone("Both lines changed " + path + ", which is no part of the book.", "Join the lines with git merge, and settle that file there.");
			}
			wholeFile(inBook.get(), whole, theirOwn, conflicts);
		}

		private void wholeFile(String inBook, Map<String, byte[]> whole, Set<String> theirOwn, List<Conflict> conflicts) throws NotDone {
			Optional<String> choice = choices.get(inBook);
			if (choice == null) {
				conflicts.add(new Conflict(inBook, inBook, false, optional(sides.base()), optional(sides.ours()), optional(sides.theirs())));
			} else if (choice.isPresent()) {
				whole.put(path, choice.get().getBytes(StandardCharsets.UTF_8));
			} else if (sides.theirs().isEmpty()) {
				theirOwn.add(path);
			} else if (sides.ours().isPresent()) {
				throw new NotDone("The file " + inBook + " is on both lines and cannot be left out by joining.",
						"Choose one of the two, and remove it afterwards.");
			}
		}

		private Optional<String> inBook() {
			String prefix = repo.prefix().isEmpty() ? "" : repo.prefix() + "/";
			return path.startsWith(prefix) && BookPart.is(path.substring(prefix.length())) ? Optional.of(path.substring(prefix.length())) : Optional.empty();
		}

		private Optional<RuleFileJoin.Joined> parts(String inBook) throws NotDone {
			return inBook.equals(ShopSettings.FILE) ? SettingsFileJoin.of(text(sides.base()), text(sides.ours()), text(sides.theirs()), choices)
					: RuleFileJoin.of(inBook, text(sides.base()), text(sides.ours()), text(sides.theirs()), choices);
		}

		/** Whether a file is joined rule by rule, row by row or setting by setting. */
		private static boolean holdsParts(String inBook) {
			return inBook.equals(ShopSettings.FILE) || inBook.matches("rules/[^/]+\\.drl|tables/[^/]+\\.csv");
		}

		private byte[] bytes(Optional<String> name) throws NotDone {
			return name.isPresent() ? Joining.bytes(repo, name.get()) : new byte[0];
		}

		private String text(Optional<String> name) throws NotDone {
			return new String(bytes(name), StandardCharsets.UTF_8);
		}

		private Optional<String> optional(Optional<String> name) throws NotDone {
			return name.isPresent() ? Optional.of(text(name)) : Optional.empty();
		}
	}

	/** @return the paths below the top of the repository that change here */
	public Set<String> changing() {
		Set<String> all = new HashSet<>(theirOwn);
		all.addAll(whole.keySet());
		return all;
	}
}
