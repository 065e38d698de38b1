package org.setwright.writing.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.setwright.book.Book;
import org.setwright.book.Problem;
import org.setwright.engine.Reading;
import org.setwright.engine.language.Rule;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;

/**
 * The rules of a book that is being typed. A rule that cannot be read at present is stood in for by what it last said, so that
 * the others are counted as they are.
 *
 * @param byFile the rules of each file, stand-ins included, in order
 * @param standIns the stand-ins by the name that stands on the screen
 */
record Understood(Map<String, List<Rule>> byFile, Map<String, Rule> standIns) {
	static final Understood NOTHING = new Understood(Map.of(), Map.of());

	/** @param reading of {@code book} @return its rules, where they cannot be read those of {@code this} */
	Understood then(Book book, Reading reading) {
		Map<String, String> texts = new HashMap<>();
		book.ruleFiles().forEach(f -> texts.put(f.path(), f.text()));
		Set<String> paths = new TreeSet<>(reading.files());
		paths.addAll(byFile.keySet());
		Map<String, List<Rule>> now = new LinkedHashMap<>();
		Map<String, Rule> instead = new HashMap<>();
		for (String path : paths) {
			List<Rule> before = byFile.getOrDefault(path, List.of());
			boolean there = reading.files().contains(path);
			if (texts.containsKey(path)) {
				now.put(path, reading.problems(path).isEmpty() ? reading.rules(path) : file(texts.get(path), reading.rules(path), before, instead));
			} else if (there && reading.problems(path).isEmpty()) {
				now.put(path, reading.rules(path));
			} else if (there || book.problems().stream().anyMatch(p -> p.at().file().equals(path) && p.severity() == Problem.Severity.ERROR)) {
				now.put(path, before);
				before.forEach(r -> instead.put(r.name(), r));
			}
		}
		return new Understood(now, instead);
	}

	private static List<Rule> file(String text, List<Rule> readable, List<Rule> before, Map<String, Rule> instead) {
		Map<Integer, Rule> byLine = new HashMap<>();
		readable.forEach(r -> byLine.put(r.at().line(), r));
		Set<String> taken = new HashSet<>(readable.stream().map(Rule::name).toList());
		Set<Rule> used = Collections.newSetFromMap(new IdentityHashMap<>());
		List<RuleBlock> blocks = RuleText.of(text).blocks();
		List<Rule> all = new ArrayList<>();
		for (int i = 0; i < blocks.size(); i++) {
			RuleBlock block = blocks.get(i);
			Rule rule = byLine.get(Lines.number(text, block.start()));
			if (rule != null) {
				all.add(rule);
			} else {
				Optional<Rule> last = last(block, i, blocks.size(), before, taken).filter(used::add);
				last.ifPresent(all::add);
				last.ifPresent(r -> instead.put(block.called().isEmpty() ? r.name() : block.called(), r));
			}
		}
		return all;
	}

	/** A rule is known again by its name, or by its place when its name is what is being typed. */
	private static Optional<Rule> last(RuleBlock block, int number, int of, List<Rule> before, Set<String> taken) {
		return before.stream().filter(r -> r.name().equals(block.called())).findFirst()
				.or(() -> before.size() == of ? Optional.of(before.get(number)) : Optional.empty()).filter(r -> !taken.contains(r.name()));
	}

	/** @return all rules, by file and position */
	List<Rule> rules() {
		return byFile.values().stream().flatMap(List::stream).toList();
	}
}
