package org.setwright.book.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.setwright.book.ExpectationText;
import org.setwright.book.ExpectedItem;
import org.setwright.book.ItemList;
import org.setwright.book.ItemText;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.Misfit;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Makes a job of one row, and names everything in it that cannot be read. */
final class RowReader {
	private static final String NONE = "none";
	private static final String FITTED = "fitted";
	private final Position at;
	private final int row;
	private final List<Fault> faults = new ArrayList<>();
	private final Map<FactKind, TreeMap<Integer, Map<Field, Value>>> answers = new LinkedHashMap<>();
	private final Map<FactKind, String> presence = new LinkedHashMap<>();
	private final Map<Setting, Expectation> expected = new LinkedHashMap<>();
	private final Map<Setting, String> rules = new LinkedHashMap<>();
	private final List<ExpectedItem> items = new ArrayList<>();
	private String name = "";
	private String notes = "";

	/** @param at where the row ends @param row its number, the headings counted */
	RowReader(Position at, int row) {
		this.at = at;
		this.row = row;
	}

	/** Takes one cell. @param heading of its column, for problems @param cell what is written @param text what that means */
	void cell(String heading, Target target, String cell, String text) {
		if (text.isEmpty() || text.equalsIgnoreCase("unknown") && !(target instanceof Target.Name)) {
			return;
		} else if (target instanceof Target.Name) {
			name = text;
		} else if (target instanceof Target.Notes) {
			notes = text.replace("\r\n", "\n");
		} else if (target instanceof Target.Presence kind) {
			present(heading, kind.kind(), text);
		} else if (target instanceof Target.Answer answer) {
			answer.field().domain().read(text).ifPresentOrElse(v -> answers.computeIfAbsent(answer.kind(), k -> new TreeMap<>())
					.computeIfAbsent(answer.item(), i -> new HashMap<>()).put(answer.field(), v),
					() -> misfit(heading, Misfit.of(answer.field().label(), cell, answer.field().domain())));
		} else if (target instanceof Target.Expected setting) {
			expected(heading, setting, cell, text);
		} else if (target instanceof Target.Items of) {
			text.lines().map(String::strip).filter(l -> !l.isEmpty()).forEach(line -> item(heading, of.list(), line));
		}
	}

	private void present(String heading, FactKind kind, String text) {
		String words = text.toLowerCase(Locale.ROOT);
		boolean number = kind.many() && words.matches("[1-9]\\d?");
		if (words.equals(NONE) && kind.always()) {
			problem(heading, "Every job has a " + kind.label() + ".", "Leave the cell empty.");
		} else if (words.equals(NONE) || words.equals(FITTED) && !kind.many() || number) {
			presence.put(kind, words);
		} else {
			problem(heading, Misfit.quoted(text) + " does not say whether there is any.",
					"Write none" + (kind.many() ? ", or how many there are." : " or fitted, or leave the cell empty."));
		}
	}

	private void expected(String heading, Target.Expected target, String cell, String text) {
		if (target.rule()) {
			rules.put(target.setting(), text);
		} else {
			ExpectationText.read(target.setting(), text, at).ifPresentOrElse(e -> expected.put(target.setting(), e),
					() -> misfit(heading, Misfit.of(target.setting().label(), cell, target.setting().domain())));
		}
	}

	private void item(String heading, ItemList list, String line) {
		ItemText.read(list, line, at).ifPresentOrElse(items::add, () -> misfit(heading, ItemText.misfit(list, line.split(":", 2)[0])));
	}

	private void misfit(String heading, Misfit misfit) {
		problem(heading, misfit.what(), misfit.remedy());
	}

	private void problem(String heading, String what, String remedy) {
		faults.add(new Fault(at, row, heading, what, remedy));
	}

	/** @return what is wrong with the row so far */
	List<Fault> faults() {
		return faults;
	}

	/** @return the job; meaningless when there are faults */
	JobCase job(String path) {
		if (name.isBlank()) {
			faults.add(new Fault(at, row, "", "The row has no name for its job.", "Fill the column \"job\", or map a column to it."));
		}
		Job job = Job.blank();
		for (FactKind kind : kinds()) {
			job = job.with(kind, entry(kind));
		}
		rules.forEach((setting, rule) -> expected.compute(setting, (s, e) -> new DecidedBy(Optional.ofNullable(e).filter(Settled.class::isInstance).map(Settled.class::cast), rule, at)));
		return new JobCase(path, name, notes, job, expected, items, List.of(), Map.of());
	}

	private List<FactKind> kinds() {
		List<FactKind> kinds = new ArrayList<>(answers.keySet());
		presence.keySet().stream().filter(k -> !answers.containsKey(k)).forEach(kinds::add);
		return kinds;
	}

	private Job.Entry entry(FactKind kind) {
		TreeMap<Integer, Map<Field, Value>> items = answers.getOrDefault(kind, new TreeMap<>());
		String said = presence.getOrDefault(kind, "");
		if (said.equals(NONE)) {
			if (!items.isEmpty()) {
				problem(kind.key(), "It says there is none, and other columns describe it.", "Correct the one or the others.");
			}
			return Job.Entry.NONE;
		}
		int number = Math.max(said.matches("\\d+") ? Integer.parseInt(said) : 1, items.isEmpty() ? 0 : items.lastKey() + 1);
		List<Fact> facts = new ArrayList<>();
		for (int i = 0; i < number; i++) {
			facts.add(kind.create(items.getOrDefault(i, Map.of())));
		}
		return Job.Entry.of(facts);
	}
}
