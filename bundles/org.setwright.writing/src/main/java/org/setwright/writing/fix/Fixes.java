package org.setwright.writing.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Mend;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.text.TextEdit;

/** Works out what would mend a problem. Pure: nothing is changed by asking. */
public final class Fixes {
	private static final String RULES = ".drl";
	private final Catalogue catalogue;

	/** @param catalogue knows the meaning of words */
	public Fixes(Catalogue catalogue) {
		this.catalogue = catalogue;
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
			unknownSetting(path, rules, at).ifPresent(fixes::add);
			Needless.line(path, text, at).ifPresent(fixes::add);
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

	/** The list of settings belongs to the program; a book cannot add to it, and says so instead of losing what was meant. */
	private Optional<Fix> unknownSetting(String path, RuleText rules, int at) {
		Optional<RuleBlock.Says> says = rules.blockAt(at).flatMap(b -> b.says().stream().filter(s -> s.start() <= at && at < s.end()).findFirst());
		Optional<Piece> setting = says.filter(s -> s.word().equals("propose")).flatMap(RuleBlock.Says::first)
				.filter(s -> s.start() == at && catalogue.setting(s.text()).isEmpty());
		return setting.map(s -> {
			List<Piece> value = says.get().pieces().stream().filter(p -> p.start() >= s.end() && !p.is(",") && !p.is(")") && !p.is(";")).toList();
			String set = value.isEmpty() ? "" : " to " + Place.words(value.stream().map(Piece::inside).reduce("", String::concat));
			String note = "caution( NOTE, \"Set " + Place.words(s.text()) + set.replace("\"", "'") + ".\" );";
			return Fix.in(path, "Say it as a note on the job instead", "Settings come from the catalogue of the program, " + nearby()
					+ " and a book cannot add to it. As a note it is shown on every job the rule speaks on, and nothing is lost.",
					List.of(new TextEdit(says.get().start(), says.get().end(), note)), -1);
		});
	}

	private String nearby() {
		return "which has " + catalogue.settings().stream().map(Setting::id).distinct().count() + " of them,";
	}
}
