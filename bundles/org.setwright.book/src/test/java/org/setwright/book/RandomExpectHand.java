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
		cautions(hand.key("cautions"), job.cautions().stream().filter(ExpectedCaution::appears).toList(), flow, indent, entries);
		cautions(hand.key("no cautions"), job.cautions().stream().filter(c -> !c.appears()).toList(), flow, indent, entries);
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

	private void cautions(String key, List<ExpectedCaution> cautions, boolean flow, String indent, List<String> entries) {
		if (cautions.size() == 1 && cautions.get(0).words().isEmpty() && hand.one(2)) {
			entries.add(key + ": " + cautions.get(0).kindText());
		} else if (!cautions.isEmpty() && (flow || hand.one(3))) {
			entries.add(key + ": [" + String.join(", ", cautions.stream().map(c -> item(c, true)).toList()) + "]");
		} else if (!cautions.isEmpty()) {
			String deeper = indent + (hand.one(3) ? "" : "  ");
			StringBuilder text = new StringBuilder(key + ":" + hand.comment() + "\n");
			cautions.forEach(c -> text.append(hand.lines(deeper)).append(deeper).append("- ").append(item(c, hand.one(3))).append(hand.comment()).append('\n'));
			entries.add(text.toString());
		}
	}

	private String item(ExpectedCaution caution, boolean inBraces) {
		String text = hand.key(caution.kindText());
		if (!caution.words().isEmpty()) {
			text += ": " + hand.words(caution.words(), inBraces);
		}
		return inBraces && !caution.words().isEmpty() ? "{ " + text + " }" : text;
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
