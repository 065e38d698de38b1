package org.setwright.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.book.JobCase.DecidedBy;

/** Writes what a job expects, and what was accepted, as {@link RandomHand} might. */
final class RandomExpectHand {
	private final RandomHand hand;

	RandomExpectHand(RandomHand hand) {
		this.hand = hand;
	}

	String expected(JobCase job) {
		boolean flow = hand.one(3);
		String indent = hand.one(2) ? "  " : "    ";
		List<String> entries = new ArrayList<>();
		job.expected().forEach((setting, expectation) -> entries.add(hand.key(setting.label()) + ": " + expectation(expectation, flow)));
		for (ItemList list : ItemList.values()) {
			items(hand.key(list.key()), job.items(list), flow, indent, entries);
		}
		return flow ? " { " + String.join(", ", entries) + " }" + hand.comment() + "\n"
				: hand.comment() + "\n" + String.join("", entries.stream().map(e -> hand.lines(indent) + indent + e + (e.endsWith("\n") ? "" : hand.comment() + "\n")).toList());
	}

	private String expectation(JobCase.Expectation expectation, boolean inBraces) {
		if (expectation instanceof DecidedBy decided) {
			String by = hand.key("by") + ": " + hand.words(decided.rule(), true);
			return "{ " + decided.is().map(s -> hand.key("is") + ": " + hand.words(s.text(), true) + ", ").orElse("") + by + " }";
		}
		String text = expectation.text();
		return hand.words(hand.one(3) ? text.replace(" within ", " ± ") : text, inBraces);
	}

	private void items(String key, List<ExpectedItem> items, boolean flow, String indent, List<String> entries) {
		if (items.size() == 1 && items.get(0).words().isEmpty() && hand.one(2)) {
			entries.add(key + ": " + items.get(0).head());
		} else if (!items.isEmpty() && (flow || hand.one(3))) {
			entries.add(key + ": [" + String.join(", ", items.stream().map(c -> item(c, true)).toList()) + "]");
		} else if (!items.isEmpty()) {
			String deeper = indent + (hand.one(3) ? "" : "  ");
			StringBuilder text = new StringBuilder(key + ":" + hand.comment() + "\n");
			items.forEach(c -> text.append(hand.lines(deeper)).append(deeper).append("- ").append(item(c, hand.one(3))).append(hand.comment()).append('\n'));
			entries.add(text.toString());
		}
	}

	private String item(ExpectedItem item, boolean inBraces) {
		String text = hand.key(item.head());
		if (!item.words().isEmpty()) {
			text += ": " + hand.words(item.words(), inBraces);
		}
		return inBraces && !item.words().isEmpty() ? "{ " + text + " }" : text;
	}

	String accepted(List<Acceptance> accepted) {
		if (hand.one(3)) {
			return " [" + String.join(", ", accepted.stream().map(this::braces).toList()) + "]" + hand.comment() + "\n";
		}
		String indent = hand.one(2) ? "  " : "";
		StringBuilder text = new StringBuilder(hand.comment()).append('\n');
		for (Acceptance acceptance : accepted) {
			text.append(indent).append("- ").append(hand.one(3) ? braces(acceptance) + hand.comment() + "\n"
					: hand.block(texts(acceptance), indent + "  ").stripLeading());
		}
		return text.toString();
	}

	private String braces(Acceptance acceptance) {
		return "{ " + String.join(", ", texts(acceptance).entrySet().stream().map(e -> hand.key(e.getKey()) + ": " + hand.words(e.getValue(), true)).toList()) + " }";
	}

	private static Map<String, String> texts(Acceptance acceptance) {
		return new LinkedHashMap<>(Acceptances.texts(acceptance));
	}
}
