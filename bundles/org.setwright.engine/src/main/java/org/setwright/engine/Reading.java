package org.setwright.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.setwright.book.Book;
import org.setwright.book.Problem;
import org.setwright.book.ShopSettings;
import org.setwright.book.Table;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.RuleParser;
import org.setwright.engine.tables.TableRules;
import org.setwright.trade.catalogue.Catalogue;

/**
 * What the rule files and tables of a book say, and when it needs its own settings, file by file, so that reading a book that has changed a little costs only the
 * files that have. Immutable.
 */
public final class Reading {
	private final Catalogue catalogue;
	private final Map<String, Part> parts;

	/**
	 * What one file says.
	 *
	 * @param from the file's text or cells, to tell whether it has changed
	 * @param rules those without faults, by position
	 * @param problems everything that is wrong with it, looked at alone
	 */
	private record Part(Object from, List<Rule> rules, List<Problem> problems) {
	}

	private Reading(Catalogue catalogue, Map<String, Part> parts) {
		this.catalogue = catalogue;
		this.parts = parts;
	}

	/** Reads every file of {@code book}. Never fails for what they say. */
	public static Reading of(Book book) {
		return new Reading(book.catalogue(), Map.of()).with(book);
	}

	/**
	 * @return what {@code book} says; files that read as they did are not read again, and their rules are the same objects, as long
	 *         as the book may speak of the same settings
	 */
	public Reading with(Book book) {
		if (!book.catalogue().equals(catalogue)) {
			return of(book);
		}
		Map<String, Part> now = new TreeMap<>();
		if (!book.settings().own().isEmpty()) {
			now.put(ShopSettings.FILE, new Part(book.settings(), List.of(), Needs.faults(book.settings())));
		}
		for (Book.RuleFile file : book.ruleFiles()) {
			now.put(file.path(), kept(file.path(), file.text()).orElseGet(() -> {
				RuleParser.Parsed parsed = RuleParser.parse(file.path(), file.text(), catalogue);
				return new Part(file.text(), parsed.rules(), parsed.problems());
			}));
		}
		for (Table table : book.tables()) {
			now.put(table.path(), kept(table.path(), table).orElseGet(() -> {
				List<Problem> problems = new ArrayList<>();
				return new Part(table, TableRules.of(table, catalogue, problems), problems);
			}));
		}
		return new Reading(catalogue, now);
	}

	private Optional<Part> kept(String path, Object from) {
		return Optional.ofNullable(parts.get(path)).filter(p -> p.from == from || p.from.equals(from));
	}

	/** @return the paths of the files read */
	public List<String> files() {
		return List.copyOf(parts.keySet());
	}

	/** @return the rules of the file at {@code path} that have no faults of their own, by position; none when there is no such file */
	public List<Rule> rules(String path) {
		return parts.containsKey(path) ? parts.get(path).rules : List.of();
	}

	/** @return all rules that have no faults of their own, by position */
	public List<Rule> rules() {
		return parts.values().stream().flatMap(p -> p.rules.stream()).toList();
	}

	/** @return what is wrong with the file at {@code path}, looked at alone */
	public List<Problem> problems(String path) {
		return parts.containsKey(path) ? parts.get(path).problems : List.of();
	}

	/** @return what is wrong with the files, each looked at alone, and two rules of one name; by position */
	public List<Problem> problems() {
		List<Problem> all = new ArrayList<>(sameNames(rules()));
		parts.values().forEach(p -> all.addAll(p.problems));
		all.sort(Comparator.comparing(Problem::at));
		return all;
	}

	/** @return a problem for each of {@code rules} that is called as one before it */
	static List<Problem> sameNames(List<Rule> rules) {
		List<Problem> problems = new ArrayList<>();
		Map<String, Rule> seen = new HashMap<>();
		for (Rule rule : rules) {
			Rule first = seen.putIfAbsent(rule.name(), rule);
			if (first != null) {
				problems.add(Problem.error(rule.at(), "There is already a rule called \"" + rule.name() + "\" at " + first.at() + ".",
						"Give one of them another name."));
			}
		}
		return problems;
	}

	/** @return what is wrong with {@code rules} taken together: two of one name, a finding nobody makes, a circle; empty when nothing is */
	public static List<Problem> together(List<Rule> rules) {
		List<Problem> problems = new ArrayList<>(sameNames(rules));
		problems.addAll(FindingOrder.of(rules).problems());
		return problems;
	}
}
