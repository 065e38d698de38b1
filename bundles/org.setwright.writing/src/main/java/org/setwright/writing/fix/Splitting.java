package org.setwright.writing.fix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.Lines;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleBlock.Says;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.text.TextEdit;

/**
 * Makes two rules of one that proposes two settings, so that each can be given a reason and an authority of its own. The first
 * keeps the name, the findings and the cautions; jobs that expect the rule to decide a setting that moves are changed too.
 */
public final class Splitting {
	private static final int LONGEST_NAME = 120;
	private final Manuscript manuscript;

	/** @param manuscript the book in which the rule stands */
	public Splitting(Manuscript manuscript) {
		this.manuscript = manuscript;
	}

	/** @return what splits the rule at {@code offset} of the file at {@code path}; empty when it proposes fewer than two settings */
	public Optional<Fix> at(String path, int offset) {
		RuleText text = RuleText.of(manuscript.text(path));
		return text.blockAt(offset).filter(b -> b.closed() && b.name().isPresent() && b.then().isPresent())
				.flatMap(block -> split(path, text, block));
	}

	private Optional<Fix> split(String path, RuleText text, RuleBlock block) {
		Map<Setting, List<Says>> proposals = new LinkedHashMap<>();
		for (Says says : block.says()) {
			if (says.word().equals("propose")) {
				says.first().flatMap(w -> manuscript.book().catalogue().setting(w.text()))
						.ifPresent(s -> proposals.computeIfAbsent(s, x -> new ArrayList<>()).add(says));
			}
		}
		if (proposals.size() < 2) {
			return Optional.empty();
		}
		List<Setting> moving = new ArrayList<>(proposals.keySet());
		Setting stays = moving.remove(0);
		Map<Setting, String> names = names(block.called(), moving);
		List<TextEdit> edits = new ArrayList<>();
		moving.forEach(s -> proposals.get(s).forEach(says -> edits.add(withoutLine(text.text(), says))));
		String lineBreak = Lines.lineBreak(text.text());
		String added = moving.stream().map(s -> lineBreak + lineBreak + copy(text.text(), block, names.get(s), proposals.get(s)))
				.collect(Collectors.joining());
		edits.add(TextEdit.insert(block.end(), added));
		try {
			Map<String, List<TextEdit>> all = inJobs(block.called(), names);
			all.put(path, edits);
			String title = "Split into " + proposals.size() + " rules, one for each setting";
			String detail = "\"" + block.called() + "\" goes on proposing " + stays.label() + " and keeps its findings and cautions."
					+ (all.size() > 1 ? " " + (all.size() - 1) + " job files that name the rule are changed too." : "");
			return Optional.of(Fix.in(title, detail, all, -1));
		} catch (JobNotWritten unwritable) {
			return Optional.empty();
		}
	}

	private Map<Setting, String> names(String name, List<Setting> settings) {
		Set<String> taken = new HashSet<>();
		for (Book.RuleFile file : manuscript.book().ruleFiles()) {
			RuleText.of(manuscript.text(file.path())).blocks().forEach(b -> taken.add(b.called()));
		}
		Map<Setting, String> names = new HashMap<>();
		for (Setting setting : settings) {
			String ending = ": " + setting.label();
			String kept = name.length() + ending.length() > LONGEST_NAME - 4 ? name.substring(0, LONGEST_NAME - 4 - ending.length()) : name;
			String free = kept + ending;
			for (int i = 2; !taken.add(free); i++) {
				free = kept + ending + " " + i;
			}
			names.put(setting, free);
		}
		return names;
	}

	/** The rule again under another name, saying nothing but {@code says}. */
	private static String copy(String text, RuleBlock block, String name, List<Says> says) {
		int nameStart = block.name().orElseThrow().start();
		int nameEnd = block.name().orElseThrow().end();
		int then = block.then().orElseThrow().end();
		String lineBreak = Lines.lineBreak(text);
		String indent = lineBreak + Lines.indent(text, says.get(0).start());
		String end = lineBreak + Lines.indent(text, block.pieces().get(block.pieces().size() - 1).start()) + "end";
		return text.substring(block.start(), nameStart) + "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"" + text.substring(nameEnd, then)
				+ says.stream().map(s -> indent + text.substring(s.start(), s.end())).collect(Collectors.joining()) + end;
	}

	/** Takes a sentence out, and its line when nothing else stands on it. */
	private static TextEdit withoutLine(String text, Says says) {
		int lineStart = Lines.startAt(text, says.start());
		boolean alone = text.substring(lineStart, says.start()).isBlank() && text.substring(says.end(), Lines.end(text, says.end())).isBlank();
		return alone ? new TextEdit(lineStart, Lines.next(text, says.end()), "") : new TextEdit(says.start(), says.end(), "");
	}

	private Map<String, List<TextEdit>> inJobs(String rule, Map<Setting, String> names) throws JobNotWritten {
		Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
		for (JobCase job : manuscript.book().jobs()) {
			List<JobEdit> changes = new ArrayList<>();
			job.expected().forEach((setting, expectation) -> {
				if (names.containsKey(setting) && expectation instanceof DecidedBy by && by.rule().equals(rule)) {
					changes.add(new JobEdit.Expected(setting, new DecidedBy(by.is(), names.get(setting), by.at())));
				}
			});
			if (!changes.isEmpty()) {
				edits.put(job.path(), manuscript.inJob(job.path(), changes));
			}
		}
		return edits;
	}
}
