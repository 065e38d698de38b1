package org.setwright.editions.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setwright.book.text.SourceText;

/** Tells the rules of a rule file apart. */
public final class RuleFiles {
	private final String path;
	private final SourceText source;
	private final String text;
	private final List<Word> words;

	private RuleFiles(String path, String text) {
		this.path = path;
		source = SourceText.of(text);
		this.text = source.text();
		words = Word.all(this.text);
	}

	/** @param path below the book @param text the whole file, whatever it holds @return its rules in file order */
	public static List<WrittenRule> rules(String path, String text) {
		return new RuleFiles(path, text).rules();
	}

	private List<WrittenRule> rules() {
		List<WrittenRule> rules = new ArrayList<>();
		int before = 0;
		for (int i = 0; i < words.size(); i++) {
			if (begins(i)) {
				int last = last(i);
				int start = lead(i, before);
				rules.add(rule(i, last, start));
				before = words.get(last).end();
				i = last;
			}
		}
		return rules;
	}

	private boolean begins(int at) {
		return words.get(at).is("rule") && at + 1 < words.size() && words.get(at + 1).kind() == Word.Kind.QUOTED;
	}

	/** The word that ends the rule which begins at {@code from}: "end", else the last one before the next rule. */
	private int last(int from) {
		int i = from + 2;
		boolean then = false;
		for (; i < words.size() && !begins(i); i++) {
			then |= words.get(i).is("then");
			if (then && words.get(i).is("end")) {
				return i;
			}
		}
		int last = i - 1;
		while (last > from + 1 && words.get(last).kind() == Word.Kind.COMMENT) {
			last--;
		}
		return last;
	}

	/** Where the comments that stand directly above the rule begin, or the rule itself. */
	private int lead(int at, int before) {
		int start = words.get(at).start();
		for (int i = at - 1; i >= 0 && words.get(i).kind() == Word.Kind.COMMENT && words.get(i).start() >= before; i--) {
			Word comment = words.get(i);
			boolean alone = text.substring(source.lineStart(comment.start()), comment.start()).isBlank();
			if (!alone || source.line(start) - source.line(Math.max(comment.start(), comment.end() - 1)) > 1) {
				break;
			}
			start = comment.start();
		}
		return start;
	}

	private WrittenRule rule(int from, int last, int start) {
		Word name = words.get(from + 1);
		List<Word> own = words.subList(from + 2, last + 1);
		int when = index(own, "when", 0);
		int then = index(own, "then", when);
		List<Word> notes = own.subList(0, when);
		Parts parts = new Parts(lines(between(own, when + 1, then)), lines(between(own, then + 1,
				own.size() - (own.isEmpty() || !own.get(own.size() - 1).is("end") ? 0 : 1))),
				note(notes, "authority").toLowerCase(Locale.ROOT), note(notes, "because"), note(notes, "source"), comments(start, words.get(last).end()));
		return new WrittenRule(name.inside(), path, source.line(words.get(from).start()), source.line(words.get(last).start()), 0, parts,
				text.substring(start, words.get(last).end()), start);
	}

	private static List<Word> between(List<Word> words, int from, int to) {
		return from >= to ? List.of() : words.subList(from, to);
	}

	private static int index(List<Word> words, String word, int from) {
		for (int i = from; i < words.size(); i++) {
			if (words.get(i).is(word)) {
				return i;
			}
		}
		return words.size();
	}

	private static String note(List<Word> notes, String word) {
		for (int i = 0; i + 2 < notes.size(); i++) {
			if (notes.get(i).text().equals("@") && notes.get(i + 1).is(word) && notes.get(i + 2).text().equals("(")) {
				List<String> inside = new ArrayList<>();
				for (int j = i + 3; j < notes.size() && !notes.get(j).text().equals(")"); j++) {
					inside.add(notes.get(j).inside());
				}
				return String.join(" ", inside);
			}
		}
		return "";
	}

	private String comments(int from, int to) {
		return words.stream().filter(w -> w.kind() == Word.Kind.COMMENT && w.start() >= from && w.end() <= to).map(Word::text)
				.collect(Collectors.joining("\n"));
	}

	/** The words of each line, comments left out, between single blanks. */
	private List<String> lines(List<Word> section) {
		List<String> lines = new ArrayList<>();
		int line = -1;
		for (Word word : section) {
			if (word.kind() != Word.Kind.COMMENT) {
				int here = source.line(word.start());
				if (here == line) {
					lines.set(lines.size() - 1, lines.get(lines.size() - 1) + " " + word.text());
				} else {
					lines.add(word.text());
					line = here;
				}
			}
		}
		return lines;
	}
}
