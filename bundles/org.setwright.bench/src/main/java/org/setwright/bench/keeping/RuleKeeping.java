package org.setwright.bench.keeping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Named;
import org.setwright.bench.words.Span;
import org.setwright.book.Book;
import org.setwright.book.Misfit;
import org.setwright.book.Problem;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.catalogue.Catalogue;

/** Keeps a rule that was typed: in place of the one it redefines, or at the end of a file. */
final class RuleKeeping {
	private static final String IN = " in ";
	private final AtHand hand;
	private final Catalogue catalogue;

	RuleKeeping(AtHand hand) {
		this.hand = hand;
		catalogue = hand.ground().catalogue();
	}

	/** @param said what follows "keep rule" */
	Keeping read(Span said) throws Misread {
		int in = said.text().toLowerCase(java.util.Locale.ROOT).startsWith("in ") ? 0 : said.text().toLowerCase(java.util.Locale.ROOT).lastIndexOf(IN);
		Span name = in < 0 ? said : said.upTo(in);
		Optional<Span> file = in < 0 ? Optional.empty() : Optional.of(said.from(in + (in == 0 ? 2 : IN.length())).bare());
		Rule rule = rule(name);
		String path = path(rule, file, said);
		return new Keeping(path, now -> edited(path, now, rule), "The rule " + Named.of(rule) + " is kept in " + path + ".");
	}

	private Rule rule(Span name) throws Misread {
		if (hand.typed().isEmpty()) {
			throw name.misread("No rule has been typed here that could be kept.", "Type one first: rule \"what it decides\" ... end.");
		} else if (!name.isEmpty()) {
			return Named.rule(name, hand.typed());
		} else if (hand.typed().size() > 1) {
			throw name.misread("Several rules have been typed, and it is not said which to keep.",
					"Write one of: " + String.join(", ", hand.typed().stream().map(Named::of).toList()) + ".");
		}
		return hand.typed().get(0);
	}

	private String path(Rule rule, Optional<Span> file, Span said) throws Misread {
		Optional<Rule> before = hand.ground().edition().rule(rule.name());
		if (before.isPresent() && before.get().at().file().endsWith(".csv")) {
			throw said.misread("The rule it redefines is a row of " + before.get().at().file() + ", which holds no rules of this form.",
					"Change the row in the table, or give the rule another name.");
		}
		if (file.isEmpty()) {
			return before.map(b -> b.at().file()).orElseThrow(() -> new Misread(said.end(), said.end(), "It is not said in which file to keep the rule.",
					"Write \"keep rule in FILE\", for example \"in " + example() + "\"."));
		}
		String path = path(file.get());
		if (before.isPresent() && !before.get().at().file().equals(path)) {
			throw file.get().misread("The rule it redefines stands in " + before.get().at().file() + ".", "Keep it there, or give the rule another name.");
		}
		return path;
	}

	private String example() {
		return hand.ground().book().ruleFiles().stream().map(Book.RuleFile::path).findFirst().orElse("rules/our-practice.drl");
	}

	private String path(Span file) throws Misread {
		String name = file.text().strip().replace('\\', '/').replaceFirst("^rules/", "").replaceFirst("\\.drl$", "");
		if (!name.matches("[\\p{L}\\d][\\p{L}\\d_-]{0,80}")) {
			throw file.misread(Misfit.quoted(file.text()) + " is no name for a file of rules.", "Write letters, digits and dashes, for example \""
					+ example() + "\".");
		}
		return "rules/" + name + ".drl";
	}

	private String edited(String path, Optional<String> now, Rule rule) throws NotKept {
		String before = now.orElse("");
		RuleParser.Parsed parsed = RuleParser.parse(path, before, catalogue);
		if (!parsed.problems().isEmpty()) {
			throw new NotKept(path + " has errors, so it is not changed. First mend " + parsed.problems().get(0));
		}
		String after = parsed.rules().stream().filter(r -> r.name().equals(rule.name())).findFirst().map(r -> replaced(before, r, rule))
				.orElseGet(() -> appended(before, rule));
		RuleParser.Parsed kept = RuleParser.parse(path, after, catalogue);
		if (!kept.problems().isEmpty() || !texts(kept.rules()).contains(rule.text()) || !texts(kept.rules()).containsAll(others(parsed.rules(), rule))) {
			throw new NotKept("The rule cannot be put into " + path + " without risk to what else it says. Copy it into the file by hand.");
		}
		refuseUnfit(path, after);
		return after;
	}

	/** What else was tried is not kept with it, so the book has to stand without that. */
	private void refuseUnfit(String path, String after) throws NotKept {
		Book book = hand.ground().book().withRules(new Book.RuleFile(path, after));
		List<Rule> rules = new ArrayList<>();
		book.ruleFiles().forEach(f -> rules.addAll(RuleParser.parse(f.path(), f.text(), catalogue).rules()));
		List<Rule> others = hand.ground().edition().rules().stream().filter(r -> r.at().file().endsWith(".csv")).toList();
		rules.addAll(others);
		List<Problem> problems = FindingOrder.of(rules).problems();
		if (!problems.isEmpty()) {
			throw new NotKept("The book would have an error with it: " + problems.get(0).what() + " Keep what it needs first, or change the rule.");
		}
	}

	private static List<String> others(List<Rule> rules, Rule but) {
		return texts(rules.stream().filter(r -> !r.name().equals(but.name())).toList());
	}

	private static List<String> texts(List<Rule> rules) {
		return rules.stream().map(Rule::text).toList();
	}

	private static String replaced(String text, Rule old, Rule rule) {
		int offset = 0;
		for (int line = 1; line < old.at().line(); line++) {
			offset = text.indexOf('\n', offset) + 1;
		}
		int start = offset + old.at().column() - 1;
		return text.startsWith(old.text(), start) ? text.substring(0, start) + rule.text() + text.substring(start + old.text().length()) : text;
	}

	private static String appended(String text, Rule rule) {
		return text.isBlank() ? text + rule.text() + "\n" : text.stripTrailing() + "\n\n" + rule.text() + "\n";
	}
}
