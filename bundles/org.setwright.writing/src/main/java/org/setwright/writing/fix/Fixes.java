package org.setwright.writing.fix;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.Mend;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.text.TextEdit;

/** Works out what would mend a problem. Pure: nothing is changed by asking. */
public final class Fixes {
	private static final String RULES = ".drl";
	private static final String TABLES = ".csv";
	private final Manuscript manuscript;
	private final Catalogue catalogue;

	/** @param manuscript the book in which something is wrong */
	public Fixes(Manuscript manuscript) {
		this.manuscript = manuscript;
		catalogue = manuscript.book().catalogue();
	}

	/**
	 * @param text of the file in which {@code problem} is, as it reads now
	 * @return what could be done, the likeliest first; empty when only a person can mend it, or {@code text} is not any more what
	 *         the problem was found in
	 */
	public List<Fix> of(Problem problem, String text) {
		String path = problem.at().file();
		int line = Lines.start(text, problem.at().line());
		if (line < 0) {
			return List.of();
		}
		int at = Math.min(line + Math.max(problem.at().column() - 1, 0), text.length());
		List<Fix> fixes = new ArrayList<>();
		problem.mend().ifPresent(mend -> fixes.addAll(mended(mend, path, text, at)));
		if (path.endsWith(RULES)) {
			RuleText rules = RuleText.of(text);
			fixes.addAll(Notes.missing(path, rules, at));
			fixes.addAll(new UnknownSettings(manuscript).inRules(path, rules, at));
			Needless.line(path, text, at).ifPresent(fixes::add);
		} else if (path.endsWith(TABLES)) {
			fixes.addAll(new UnknownSettings(manuscript).inTable(problem.at(), text, at));
		}
		return fixes;
	}

	private List<Fix> mended(Mend mend, String path, String text, int at) {
		if (mend instanceof Mend.Insert insert) {
			return List.of(inserted(insert.text(), path, text, at));
		}
		Mend.Replace replace = (Mend.Replace) mend;
		int found = Place.of(replace.written(), text, at);
		return found < 0 ? List.of() : replace.instead().stream().map(word -> Fix.in(path, "Write " + word.strip(), Meaning.of(word.strip(), catalogue),
				List.of(new TextEdit(found, found + replace.written().length(), Place.fitting(word, path, text, found))), -1)).toList();
	}

	/** What is missing belongs behind what stands before, not in front of what follows, which may be lines below. */
	private static Fix inserted(String missing, String path, String text, int at) {
		int end = RuleText.of(text).pieces().stream().filter(p -> p.kind() != Piece.Kind.COMMENT && p.end() <= at).mapToInt(Piece::end).max().orElse(at);
		String added = missing.replace("\n", Lines.lineBreak(text));
		return Fix.in(path, "Add the missing " + missing.strip(), "", List.of(TextEdit.insert(end, added)), -1);
	}
}
