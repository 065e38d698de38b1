package org.setwright.workbench.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.Book;
import org.setwright.book.Position;
import org.setwright.book.ShopSettings;
import org.setwright.book.Table;
import org.setwright.engine.language.Rule;
import org.setwright.workbench.contents.BookNode.Sign;
import org.setwright.workbench.desk.Evaluation;

/** Turns an evaluation into the contents of the book: files, their rules, and on how many jobs each rule speaks. */
public final class BookTree {
	private static final String DETAILS = "book.yaml"; //$NON-NLS-1$

	private BookTree() {
	}

	/** @return the lines at the top */
	public static List<BookNode> of(Evaluation evaluation) {
		Map<String, List<Rule>> rules = evaluation.rules().edition().map(e -> e.rules().stream()
				.collect(Collectors.groupingBy(r -> r.at().file()))).orElse(Map.of());
		RuleUse use = RuleUse.of(evaluation.outcomes().values());
		List<BookNode> files = new ArrayList<>();
		files.add(new BookNode(Sign.BOOK, evaluation.book().name(), "", Position.whole(DETAILS), List.of())); //$NON-NLS-1$
		if (!evaluation.book().settings().own().isEmpty() || !evaluation.problemsIn(ShopSettings.FILE).isEmpty()) {
			files.add(settings(evaluation));
		}
		for (Book.RuleFile file : evaluation.book().ruleFiles()) {
			files.add(file(Sign.RULE, file.path(), rules, use, evaluation));
		}
		for (Table table : evaluation.book().tables()) {
			files.add(file(Sign.TABLE, table.path(), rules, use, evaluation));
		}
		return files;
	}

	private static BookNode settings(Evaluation evaluation) {
		int mistakes = evaluation.problemsIn(ShopSettings.FILE).size();
		List<BookNode> own = evaluation.book().settings().own().stream()
				.map(s -> new BookNode(Sign.SETUP, s.setting().label(), s.setting().meaning(), s.at(), List.of())).toList();
		return new BookNode(mistakes > 0 ? Sign.PROBLEM : Sign.SETUP, ShopSettings.FILE, mistakes > 0 ? NLS.bind(Messages.BookTree_mistakes, mistakes)
				: Messages.BookTree_ownSettings, Position.whole(ShopSettings.FILE), own);
	}

	private static BookNode file(Sign sign, String path, Map<String, List<Rule>> rules, RuleUse use, Evaluation evaluation) {
		List<BookNode> inside = rules.getOrDefault(path, List.of()).stream().map(r -> rule(r, use)).toList();
		int mistakes = evaluation.problemsIn(path).size();
		String remark = mistakes > 0 ? NLS.bind(Messages.BookTree_mistakes, mistakes)
				: rules(inside.size());
		return new BookNode(mistakes > 0 ? Sign.PROBLEM : sign, path.substring(path.indexOf('/') + 1), remark,
				Position.whole(path), inside);
	}

	private static String rules(int count) {
		return switch (count) {
			case 0 -> ""; //$NON-NLS-1$
			case 1 -> Messages.BookTree_oneRule;
			default -> NLS.bind(Messages.BookTree_rules, count);
		};
	}

	private static BookNode rule(Rule rule, RuleUse use) {
		return new BookNode(Sign.RULE, rule.name(), use.words(rule), rule.at(), List.of());
	}
}
