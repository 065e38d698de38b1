package org.setwright.engine.measuring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.engine.Reading;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;

/**
 * Grows or shrinks a book to any number of rules and jobs, for measuring. A smaller book is a choice of the rules, with whatever
 * makes the findings they ask for. A larger one holds copies under other names: every other copy speaks for one maker only, as a
 * shop's rules do, so that most of these are silent on most jobs; the rest speak wherever the first one does, which is more than
 * in a real book. Tables are left out, so that the number of rules is exact. Jobs beyond those of the book are copies under other
 * names.
 */
public final class GrownBook {
	private static final int RULES_IN_A_FILE = 25;
	private static final int MAKERS = 12;
	private static final Pattern NAME = Pattern.compile("\\A(rule\\s+)\"((?:\\\\.|[^\"\\\\])*)\"");
	private static final Pattern FINDS = Pattern.compile("(\\bfind\\s*\\(\\s*)(\\w+)");
	private static final Pattern WHEN = Pattern.compile("(?m)^when\\b");

	private GrownBook() {
	}

	/**
	 * @param from a book without errors
	 * @param rules how many the result has
	 * @param jobs how many the result has
	 * @throws IllegalArgumentException when {@code from} has no rules or no jobs
	 */
	public static Book of(Book from, int rules, int jobs) {
		List<Rule> own = Reading.of(from).rules().stream().filter(r -> r.at().file().endsWith(".drl")).toList();
		if (own.isEmpty() || from.jobs().isEmpty()) {
			throw new IllegalArgumentException("nothing to grow from");
		}
		List<String> texts = rules <= own.size() ? chosen(own, rules) : grown(own, rules);
		return from.with(files(texts), List.of(), jobs(from.jobs(), jobs)).withProblems(List.of());
	}

	/** As many rules as wanted, each with the makers of its findings; always the same ones. */
	private static List<String> chosen(List<Rule> own, int wanted) {
		FindingOrder order = FindingOrder.of(own);
		List<Rule> shuffled = new ArrayList<>(own);
		Collections.shuffle(shuffled, new Random(1));
		Set<Rule> chosen = Collections.newSetFromMap(new IdentityHashMap<>());
		for (Rule rule : shuffled) {
			Set<Rule> needed = Collections.newSetFromMap(new IdentityHashMap<>());
			need(rule, order, needed);
			needed.removeAll(chosen);
			if (chosen.size() + needed.size() <= wanted) {
				chosen.addAll(needed);
			}
		}
		return own.stream().filter(chosen::contains).map(Rule::text).toList();
	}

	private static void need(Rule rule, FindingOrder order, Set<Rule> needed) {
		if (needed.add(rule)) {
			order.asked(rule).forEach(finding -> order.makers(finding).forEach(maker -> need(maker, order, needed)));
		}
	}

	private static List<String> grown(List<Rule> own, int wanted) {
		List<String> texts = new ArrayList<>(own.stream().map(Rule::text).toList());
		for (int i = 0; texts.size() < wanted; i++) {
			texts.add(copy(own.get(i % own.size()).text(), 2 + i / own.size(), i));
		}
		return texts;
	}

	/** A copy asks for the findings of the first, and makes findings of its own that nobody asks for. */
	private static String copy(String text, int copy, int number) {
		String named = NAME.matcher(text).replaceFirst(m -> Matcher.quoteReplacement(m.group(1) + "\"" + shortened(m.group(2)) + " (" + copy + ")\""));
		String finding = FINDS.matcher(named).replaceAll(m -> Matcher.quoteReplacement(m.group(1) + m.group(2) + "_" + copy));
		return number % 2 == 0 ? finding : WHEN.matcher(finding)
				.replaceFirst("when\n    OutdoorUnit( maker == \"Measured Maker " + number % MAKERS + "\" )");
	}

	private static String shortened(String name) {
		return name.length() > 110 ? name.substring(0, 110).replaceAll("\\\\+$", "") : name;
	}

	private static List<Book.RuleFile> files(List<String> texts) {
		List<Book.RuleFile> files = new ArrayList<>();
		for (int i = 0; i < texts.size(); i += RULES_IN_A_FILE) {
			List<String> some = texts.subList(i, Math.min(i + RULES_IN_A_FILE, texts.size()));
			files.add(new Book.RuleFile(String.format("rules/measured-%03d.drl", i / RULES_IN_A_FILE), String.join("\n\n", some) + "\n"));
		}
		return files;
	}

	private static List<JobCase> jobs(List<JobCase> own, int wanted) {
		List<JobCase> jobs = new ArrayList<>();
		for (int i = 0; i < wanted; i++) {
			JobCase job = own.get(i % own.size());
			String name = i < own.size() ? job.name() : job.name() + " (" + (1 + i / own.size()) + ")";
			jobs.add(new JobCase(String.format("jobs/measured-%05d.yaml", i), name, job.notes(), job.job(), job.expected(), job.items(),
					job.accepted(), job.positions()));
		}
		return jobs;
	}
}
