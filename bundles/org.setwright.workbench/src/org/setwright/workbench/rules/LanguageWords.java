package org.setwright.workbench.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.workbench.uses.ThingWords;
import org.setwright.workbench.uses.UseWords;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;

/** Says what the words of the rule language itself mean, and how many rules use them. */
final class LanguageWords {
	private static final Map<String, String> MEANINGS = Map.ofEntries(
			Map.entry("when", Messages.LanguageWords_when), //$NON-NLS-1$
			Map.entry("then", Messages.LanguageWords_then), //$NON-NLS-1$
			Map.entry("end", Messages.LanguageWords_end), //$NON-NLS-1$
			Map.entry("not", Messages.LanguageWords_not), //$NON-NLS-1$
			Map.entry("exists", Messages.LanguageWords_exists), //$NON-NLS-1$
			Map.entry("and", Messages.LanguageWords_and), //$NON-NLS-1$
			Map.entry("or", Messages.LanguageWords_or), //$NON-NLS-1$
			Map.entry("in", Messages.LanguageWords_in), //$NON-NLS-1$
			Map.entry("matches", Messages.LanguageWords_matches), //$NON-NLS-1$
			Map.entry("propose", Messages.LanguageWords_propose), //$NON-NLS-1$
			Map.entry("find", Messages.LanguageWords_find), //$NON-NLS-1$
			Map.entry("caution", Messages.LanguageWords_caution), //$NON-NLS-1$
			Map.entry("startUp", Messages.LanguageWords_startUp), //$NON-NLS-1$
			Map.entry("Finding", Messages.LanguageWords_Finding), //$NON-NLS-1$
			Map.entry("UNKNOWN", Messages.LanguageWords_UNKNOWN), //$NON-NLS-1$
			Map.entry("YES", Messages.LanguageWords_YES), //$NON-NLS-1$
			Map.entry("NO", Messages.LanguageWords_NO), //$NON-NLS-1$
			Map.entry("authority", Messages.LanguageWords_authority), //$NON-NLS-1$
			Map.entry("because", Messages.LanguageWords_because), //$NON-NLS-1$
			Map.entry("source", Messages.LanguageWords_source), //$NON-NLS-1$
			Map.entry("rule", Messages.LanguageWords_rule)); //$NON-NLS-1$

	private LanguageWords() {
	}

	/** @return the meaning of {@code word}; empty when it is no word of the language */
	static Optional<String> meaning(String word) {
		return Optional.ofNullable(MEANINGS.get(word)).map(means -> ThingWords.line(word, means));
	}

	/** @return the same in a sentence, without the word; "" when it is no word of the language */
	static String sentence(String word) {
		return MEANINGS.getOrDefault(word, ""); //$NON-NLS-1$
	}

	/** @return in how many rules of the book {@code word} stands, and on how many jobs some of these speak */
	static String used(Manuscript book, String word) {
		List<RuleBlock> all = book.book().ruleFiles().stream().flatMap(f -> RuleText.of(book.text(f.path())).blocks().stream()).toList();
		return UseWords.inRules(all.stream().filter(b -> has(b, word)).map(RuleBlock::called).toList(), all.size());
	}

	private static boolean has(RuleBlock block, String word) {
		return block.pieces().stream().anyMatch(p -> p.kind() == Piece.Kind.WORD && p.text().equals(word));
	}
}
