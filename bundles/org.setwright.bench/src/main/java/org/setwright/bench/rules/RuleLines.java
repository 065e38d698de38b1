package org.setwright.bench.rules;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Span;
import org.setwright.book.Problem;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.catalogue.Catalogue;

/** Reads rules and conditions typed in the language of rule files. */
public final class RuleLines {
	private static final Pattern BEGINS = Pattern.compile("\\s*rule\\b.*", Pattern.DOTALL);
	private static final Pattern ENDS = Pattern.compile(".*(?:^|[\\s;)])end\\s*", Pattern.DOTALL);
	private static final Pattern COMMENTS_AND_QUOTES = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*+\"|//[^\\n]*|/\\*.*?\\*/", Pattern.DOTALL);
	private static final Pattern CONDITION = Pattern.compile("\\s*(?:(?:not|exists)\\b\\s*|\\(\\s*|\\$\\w+\\s*:\\s*)*([A-Z]\\w*)\\s*\\(.*",
			Pattern.DOTALL);
	private static final String FINDING = "Finding";
	private static final String ASKED = "rule \"asked on the bench\" @authority( shop practice ) "
			+ "@because( \"asked\" ) @source( common practice ) when\n";

	private RuleLines() {
	}

	/** @return whether {@code typed} begins a rule */
	public static boolean begins(String typed) {
		return BEGINS.matcher(typed).matches();
	}

	/** @return whether {@code typed}, which begins a rule, has come to its end */
	public static boolean complete(String typed) {
		return ENDS.matcher(COMMENTS_AND_QUOTES.matcher(typed).replaceAll(" ")).matches();
	}

	/** @return whether {@code typed} is a condition in the language of rules */
	public static boolean condition(String typed, Catalogue catalogue) {
		Matcher matcher = CONDITION.matcher(typed);
		return matcher.matches() && (matcher.group(1).equals(FINDING) || catalogue.kind(matcher.group(1)).isPresent());
	}

	/**
	 * @param typed one whole rule
	 * @return the rule; it fits the book at hand
	 */
	public static Rule read(Span typed, AtHand hand) throws Misread {
		Rule rule = one(typed.text(), typed.start(), 0, hand.ground().catalogue());
		List<Problem> problems = FindingOrder.of(hand.rulesWith(rule)).problems();
		if (!problems.isEmpty()) {
			throw misread(problems.get(0), typed.text(), typed.start(), 0);
		}
		return rule;
	}

	/** @return a rule that speaks where the conditions typed hold; it is not in force */
	public static Rule asking(Span typed, AtHand hand) throws Misread {
		try {
			String text = ASKED + typed.text() + "\nthen find( ASKED_ON_THE_BENCH ); end";
			Rule rule = one(text, typed.start(), ASKED.length(), hand.ground().catalogue());
			List<Problem> problems = FindingOrder.of(hand.rulesWith(rule)).problems();
			if (!problems.isEmpty()) {
				throw misread(problems.get(0), text, typed.start(), ASKED.length());
			}
			return rule;
		} catch (Misread why) {
			throw why.end() <= typed.end() ? why : new Misread(typed.end(), typed.end(), "Something is missing at the end of the condition.", why.remedy());
		}
	}

	private static Rule one(String text, int start, int lead, Catalogue catalogue) throws Misread {
		RuleParser.Parsed parsed = RuleParser.parse(Ground.BENCH, text, catalogue);
		if (!parsed.problems().isEmpty()) {
			throw misread(parsed.problems().get(0), text, start, lead);
		} else if (parsed.rules().size() != 1) {
			throw new Misread(start, start + text.length() - lead, "One rule at a time can be tried.", "Type the next rule after this one.");
		}
		return parsed.rules().get(0);
	}

	/** @param lead how many characters before {@code start} were not typed */
	private static Misread misread(Problem problem, String text, int start, int lead) {
		int offset = 0;
		for (int line = 1; line < problem.at().line(); line++) {
			offset = text.indexOf('\n', offset) + 1;
		}
		int at = Math.min(text.length(), offset + Math.max(0, problem.at().column() - 1));
		int from = Math.max(0, at - lead);
		int end = at;
		while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
			end++;
		}
		return new Misread(start + from, start + Math.max(from, end - lead), problem.what(), problem.remedy());
	}
}
