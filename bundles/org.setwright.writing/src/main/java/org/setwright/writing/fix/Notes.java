package org.setwright.writing.fix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setwright.trade.catalogue.Authority;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleBlock.Note;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.text.TextEdit;

/** Adds the annotations a rule must have. What only a person can know is left empty, so that the problem stays until it is written. */
final class Notes {
	private static final String STEP = "    ";
	private static final List<String> ORDER = List.of("authority", "because", "source");

	private Notes() {
	}

	/** @return what adds each annotation that the rule whose name stands at {@code at} lacks */
	static List<Fix> missing(String path, RuleText rules, int at) {
		List<Fix> fixes = new ArrayList<>();
		rules.blocks().stream().filter(b -> b.name().filter(n -> n.start() == at).isPresent()).findFirst().ifPresent(block -> {
			for (String word : ORDER) {
				Note note = block.note(word).orElse(null);
				if (note == null) {
					fixes.addAll(added(word, path, rules.text(), block));
				} else if (note.inside().replace("\"", "").isBlank()) {
					fixes.add(filled(word, path, note));
				}
			}
		});
		return fixes;
	}

	private static Fix filled(String word, String path, Note note) {
		String empty = "@" + word + "( \"\" )";
		return Fix.in(path, "Write the " + called(word) + " here", "", List.of(new TextEdit(note.start(), note.end(), empty)),
				note.start() + empty.indexOf('"') + 1);
	}

	private static List<Fix> added(String word, String path, String text, RuleBlock block) {
		return switch (word) {
			case "authority" -> Arrays.stream(Authority.values()).sorted((a, b) -> Boolean.compare(b == Authority.SHOP_PRACTICE, a == Authority.SHOP_PRACTICE))
					.map(a -> add("Add the authority: " + a.label(), a.meaning(), word, "\"" + a.label() + "\"", path, text, block)).toList();
			case "because" -> List.of(add("Add the reason", "A sentence the person in the van can believe.", word, "\"\"", path, text, block));
			default -> List.of(add("Add the source", "Document, edition and place.", word, "\"\"", path, text, block),
					add("Add the source: common practice", "For what the trade does and no document says.", word, "common practice", path, text, block));
		};
	}

	private static Fix add(String title, String detail, String word, String value, String path, String text, RuleBlock block) {
		int behind = block.name().orElseThrow().end();
		for (Note note : block.notes()) {
			if (ORDER.indexOf(note.word()) < ORDER.indexOf(word)) {
				behind = Math.max(behind, note.end());
			}
		}
		String indent = block.notes().isEmpty() ? Lines.indent(text, block.start()) + STEP : Lines.indent(text, block.notes().get(0).start());
		String line = Lines.lineBreak(text) + indent + "@" + word + "( " + value + " )";
		boolean open = value.equals("\"\"");
		return Fix.in(path, title, detail, List.of(TextEdit.insert(behind, line)), open ? behind + line.indexOf('"') + 1 : -1);
	}

	private static String called(String word) {
		return word.equals("because") ? "reason" : word;
	}
}
