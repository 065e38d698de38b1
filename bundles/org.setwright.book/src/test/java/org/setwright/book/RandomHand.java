package org.setwright.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;

/** Writes a job as somebody might write it by hand: any style, any order, comments and blank lines anywhere. */
final class RandomHand {
	private final RandomJobs jobs;
	private final List<String> comments = new ArrayList<>();

	RandomHand(RandomJobs jobs) {
		this.jobs = jobs;
	}

	/** @return the comments written, each unique */
	List<String> comments() {
		return comments;
	}

	String write(JobCase job) {
		List<String> parts = new ArrayList<>();
		List<String> absent = new ArrayList<>();
		parts.add(key("job") + ": " + words(job.name(), false) + comment() + "\n");
		if (!job.notes().isEmpty()) {
			parts.add("notes: " + (plainLines(job.notes()) && one(2) ? YamlWords.onLines(job.notes(), "   ") : YamlWords.doubleQuoted(job.notes()) + comment()) + "\n");
		}
		for (FactKind kind : jobs.stated()) {
			Job.Entry entry = job.job().entry(kind);
			if (entry.presence() == Job.Presence.PRESENT) {
				parts.add(key(kind.key()) + ":" + (kind.many() ? list(kind, entry.facts()) : mapping(answers(kind, entry.facts().get(0)), "", !kind.always())));
			} else if (entry.presence() == Job.Presence.NONE && one(2)) {
				absent.add(one(2) ? kind.key() : kind.label().toUpperCase(Locale.ROOT));
			} else if (entry.presence() == Job.Presence.NONE || one(4)) {
				parts.add(kind.key() + ": " + (entry.presence() == Job.Presence.NONE ? "none" : "Unknown") + comment() + "\n");
			}
		}
		if (!absent.isEmpty()) {
			parts.add("not fitted:" + names(absent));
		}
		if (job.expectations() > 0) {
			parts.add("expect:" + new RandomExpectHand(this).expected(job));
		}
		if (!job.accepted().isEmpty()) {
			parts.add("accepted:" + new RandomExpectHand(this).accepted(job.accepted()));
		}
		if (one(2)) {
			java.util.Collections.shuffle(parts, jobs.random);
		}
		StringBuilder text = new StringBuilder(lines(""));
		parts.forEach(part -> text.append(part).append(lines("")));
		return one(3) ? text.toString().replace("\n", "\r\n") : one(5) ? text.toString().stripTrailing() : text.toString();
	}

	private Map<String, String> answers(FactKind kind, Fact fact) {
		Map<String, String> answers = new LinkedHashMap<>();
		for (Field field : RandomJobs.asked(kind)) {
			kind.answer(fact, field).value().ifPresentOrElse(v -> answers.put(field.label(), v.text()), () -> {
				if (one(4)) {
					answers.put(field.label(), "unknown");
				}
			});
		}
		return answers;
	}

	private String mapping(Map<String, String> answers, String indent, boolean mayBeAbsent) {
		if (answers.isEmpty()) {
			return (mayBeAbsent && one(2) ? " fitted" : " {}") + comment() + "\n";
		}
		return one(2) ? " " + braces(answers, indent) + comment() + "\n" : comment() + "\n" + block(answers, indent + (one(2) ? "  " : "    "));
	}

	private String list(FactKind kind, List<Fact> facts) {
		List<Map<String, String>> items = facts.stream().map(f -> answers(kind, f)).toList();
		if (one(4)) {
			return " [" + String.join(one(2) ? "," : " , ", items.stream().map(i -> i.isEmpty() ? "unknown" : braces(i, " ")).toList()) + "]" + comment() + "\n";
		}
		String indent = jobs.pick(List.of("", "  ", "   "));
		StringBuilder text = new StringBuilder(comment()).append('\n');
		for (Map<String, String> item : items) {
			text.append(lines(indent)).append(indent).append("- ");
			String naming = kind.fields().stream().filter(Field::naming).map(Field::label).findFirst().orElse("");
			if (item.isEmpty() || item.size() == 1 && item.containsKey(naming)) {
				text.append(item.isEmpty() ? "unknown" : words(item.get(naming), false)).append(comment()).append('\n');
			} else {
				text.append(one(2) ? braces(item, indent + "  ") + comment() + "\n" : block(item, indent + "  ").stripLeading());
			}
		}
		return text.toString();
	}

	private String braces(Map<String, String> answers, String indent) {
		boolean onLines = one(4);
		StringBuilder text = new StringBuilder("{ ");
		for (var answer : answers.entrySet()) {
			String separator = text.length() == 2 ? "" : onLines ? "," + comment() + "\n" + indent + "   " : ", ";
			text.append(separator).append(key(answer.getKey())).append(": ").append(words(answer.getValue(), true));
		}
		return text.append(one(6) ? ", }" : " }").toString();
	}

	String block(Map<String, String> answers, String indent) {
		StringBuilder text = new StringBuilder();
		answers.forEach((key, value) -> {
			text.append(text.isEmpty() ? "" : lines(indent)).append(indent).append(key(key)).append(one(6) ? ":   " : ": ")
					.append(words(value, false)).append(comment()).append('\n');
		});
		return text.toString();
	}

	private String names(List<String> names) {
		return names.size() == 1 && one(2) ? " " + names.get(0) + comment() + "\n"
				: one(2) ? " [" + String.join(", ", names) + "]" + comment() + "\n"
						: comment() + "\n" + names.stream().map(n -> "  - " + n + comment() + "\n").reduce("", String::concat);
	}

	String key(String label) {
		return one(8) ? "\"" + label + "\"" : one(8) ? label.toUpperCase(Locale.ROOT) : label;
	}

	String words(String text, boolean inBraces) {
		return one(6) ? YamlWords.doubleQuoted(text) : YamlWords.of(text, inBraces);
	}

	String comment() {
		return one(4) ? " " + aComment() : "";
	}

	String lines(String indent) {
		return (one(4) ? indent + aComment() + "\n" : "") + (one(5) ? "\n" : "");
	}

	private String aComment() {
		comments.add("# c" + comments.size() + ": it's {so} \"far\" .");
		return comments.get(comments.size() - 1);
	}

	private static boolean plainLines(String notes) {
		return notes.lines().allMatch(l -> l.strip().equals(l) && !l.isEmpty());
	}

	boolean one(int in) {
		return jobs.random.nextInt(in) == 0;
	}
}
