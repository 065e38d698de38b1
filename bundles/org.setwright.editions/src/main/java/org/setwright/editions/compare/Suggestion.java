package org.setwright.editions.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A message for an edition, which says what changed. Why it changed only a person can add. */
public final class Suggestion {
	private static final int LONGEST_TITLE = 72;

	private Suggestion() {
	}

	/** @return a title of at most 72 characters, and a line for each change where there are several */
	public static String message(BookChanges changes) {
		List<String> lines = new ArrayList<>();
		changes.rules().forEach(c -> lines.add(c.shown()));
		changes.settings().forEach(c -> lines.add(c.shown()));
		changes.jobs().forEach(c -> lines.add("job " + c.job().name() + ": " + c.what()));
		changes.files().forEach(f -> lines.add(f + ": changed"));
		if (lines.isEmpty()) {
			return "Nothing changed";
		} else if (lines.size() == 1 && lines.get(0).length() <= LONGEST_TITLE) {
			return lines.get(0);
		}
		return named(changes).orElseGet(() -> counted(changes)) + "\n\n" + lines.stream().map(l -> "- " + l).collect(Collectors.joining("\n"));
	}

	/** A few rules of which the same became are named. */
	private static Optional<String> named(BookChanges changes) {
		if (!changes.settings().isEmpty() || !changes.jobs().isEmpty() || !changes.files().isEmpty() || changes.rules().stream().map(RuleChange::kind).distinct().count() != 1) {
			return Optional.empty();
		}
		String names = changes.rules().stream().map(c -> c.rule().shown()).collect(Collectors.joining(", "));
		return Optional.of(names + ": " + changes.rules().get(0).kind().words()).filter(t -> t.length() <= LONGEST_TITLE);
	}

	private static String counted(BookChanges changes) {
		Map<String, Integer> counted = new LinkedHashMap<>();
		for (RuleChange change : changes.rules()) {
			String noun = change.rule().isRow() ? "row" : "rule";
			String verb = switch (change.kind()) {
				case WORDING -> "reworded";
				case MOVED -> "moved";
				default -> change.kind().words();
			};
			counted.merge(noun + "|" + verb, 1, Integer::sum);
		}
		for (SettingChange setting : changes.settings()) {
			String verb = setting.before().isEmpty() ? "added" : setting.after().isEmpty() ? "removed" : setting.wordsOnly() ? "reworded" : "changed";
			counted.merge("setting|" + verb, 1, Integer::sum);
		}
		for (JobChange job : changes.jobs()) {
			counted.merge("job|" + (job.before().isEmpty() ? "added" : job.after().isEmpty() ? "removed" : "changed"), 1, Integer::sum);
		}
		List<String> parts = new ArrayList<>();
		counted.forEach((what, number) -> parts.add(number + " " + what.replace("|", number == 1 ? " " : "s ")));
		if (!changes.files().isEmpty()) {
			parts.add(changes.files().size() == 1 ? changes.files().get(0) + " changed" : changes.files().size() + " other files changed");
		}
		String title = String.join(", ", parts);
		return title.length() <= LONGEST_TITLE ? title : changes.rules().size() + " rules and rows, "
				+ (changes.settings().isEmpty() ? "" : changes.settings().size() + " settings, ") + changes.jobs().size() + " jobs changed";
	}
}
