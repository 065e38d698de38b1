package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.book.ShopSettingText;
import org.setwright.command.terminal.Style;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.JobChange;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.compare.SettingChange;
import org.setwright.editions.compare.SideBySide;
import org.setwright.editions.impact.Cause;
import org.setwright.editions.impact.Difference;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.impact.JobImpact;

/** What changed, and what it means, one thing a change. */
final class ChangeItems {
	static final List<String> COLUMNS = List.of("sort", "name", "what", "at", "before", "after", "causes");
	private final List<Item> items = new ArrayList<>();

	List<Item> all() {
		return items;
	}

	/** @param texts whether rules and settings are shown side by side @param width of a page */
	ChangeItems changes(BookChanges changes, boolean texts, int width) {
		for (RuleChange change : changes.rules()) {
			String at = change.rule().file() + ":" + change.rule().line();
			Item item = new Item().with("sort", change.rule().isRow() ? "row" : "rule", "name", change.rule().name(), "what", change.what(), "at", at,
					"before", change.before().map(r -> r.text()).orElse(""), "after", change.after().map(r -> r.text()).orElse(""));
			item.line(2, change.matters() ? Style.STRONG : Style.PLAIN, change.shown() + "   [" + at + "]");
			if (texts) {
				sideBySide(item, change.before().map(r -> r.text()).orElse(""), change.after().map(r -> r.text()).orElse(""), (width - 9) / 2);
			}
			items.add(item);
		}
		changes.settings().forEach(s -> setting(s, texts, width));
		for (JobChange job : changes.jobs()) {
			items.add(new Item().with("sort", "job", "name", job.job().name(), "what", job.what(), "at", job.job().path())
					.line(2, Style.PLAIN, "job " + job.job().name() + ": " + job.what() + "   [" + job.job().path() + "]"));
		}
		changes.files().forEach(f -> items.add(new Item().with("sort", "file", "name", f, "what", "changed", "at", f)
				.line(2, Style.PLAIN, f + ": changed")));
		return this;
	}

	private void setting(SettingChange change, boolean texts, int width) {
		String at = change.setting().at().file() + ":" + change.setting().at().line();
		String before = change.before().map(ShopSettingText::text).orElse("");
		String after = change.after().map(ShopSettingText::text).orElse("");
		Item item = new Item().with("sort", "setting", "name", change.setting().setting().label(), "what", change.what(), "at", at, "before", before, "after",
				after).line(2, change.wordsOnly() ? Style.PLAIN : Style.STRONG, change.shown() + "   [" + at + "]");
		if (texts) {
			sideBySide(item, before, after, (width - 9) / 2);
		}
		items.add(item);
	}

	private static void sideBySide(Item item, String before, String after, int half) {
		for (SideBySide.Row row : SideBySide.of(before, after).rows()) {
			String left = row.left().replace("\t", "    ");
			String right = row.right().replace("\t", "    ");
			for (int i = 0; i == 0 || i < Math.max(left.length(), right.length()); i += half) {
				item.verbatim(4, row.changed() ? Style.ATTENTION : Style.QUIET, (row.changed() ? "* " : "  ") + fit(left, i, half) + "| " + fit(right, i, half));
			}
		}
	}

	private static String fit(String text, int from, int width) {
		String part = from >= text.length() ? "" : text.substring(from, Math.min(text.length(), from + width));
		return part + " ".repeat(width - part.length());
	}

	/** What it means for the jobs. */
	ChangeItems impact(Impact impact) {
		boolean first = true;
		for (JobImpact job : impact.jobs()) {
			String name = job.job().name() + (job.standing().words().isEmpty() ? "" : " (" + job.standing().words() + ")");
			Item head = new Item().line(0, Style.STRONG, (first ? "What it means: " : "") + name);
			first = false;
			if (!job.fault().isEmpty()) {
				items.add(head.with("sort", "fault", "name", job.job().name(), "what", job.fault(), "at", job.job().path()).line(2, Style.ALARM, job.fault()));
			}
			for (Difference difference : job.differences()) {
				Item item = difference == job.differences().get(0) ? head : new Item();
				items.add(item.with("sort", "impact", "name", job.job().name(), "what", difference.point().words(), "at", job.job().path(), "before",
						difference.before(),
						"after", difference.after(), "causes", difference.causes().stream().map(Cause::shown).collect(Collectors.joining(" or "))));
				item.line(2, Style.PLAIN, difference.point().words() + ": " + difference.before() + " before, " + difference.after() + " now");
				causes(difference.causes()).forEach(c -> item.line(6, Style.QUIET, c));
			}
		}
		return this;
	}

	/** @return what is responsible, in lines */
	static List<String> causes(List<Cause> causes) {
		if (causes.isEmpty()) {
			return List.of("what is responsible could not be found");
		}
		String by = causes.size() > 1 ? "each of these alone would do it: " : causes.get(0).together().size() > 1 ? "only together: " : "because of ";
		return causes.stream().map(c -> by + c.shown()).toList();
	}
}
