package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.ShopSettings;
import org.setwright.book.Table;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.RuleText;

/** Every place of a book in which something of it is mentioned. Immutable. */
public final class Uses {
	private final List<Mention> all;

	private Uses(List<Mention> all) {
		this.all = List.copyOf(all);
	}

	/** Looks through every rule, table and job; files that cannot be read at present are looked through as far as they can. */
	public static Uses in(Manuscript manuscript) {
		List<Mention> all = new ArrayList<>();
		for (Book.RuleFile file : manuscript.book().ruleFiles()) {
			all.addAll(inRules(manuscript, file.path()));
		}
		for (Table table : manuscript.book().tables()) {
			all.addAll(TableMentions.of(table, manuscript.text(table.path()), manuscript.book().catalogue()));
		}
		for (JobCase job : manuscript.book().jobs()) {
			all.addAll(JobMentions.of(job, manuscript.text(job.path())));
		}
		all.addAll(ShopMentions.of(manuscript.book().settings(), manuscript.text(ShopSettings.FILE)));
		all.sort(Comparator.comparing(Mention::path).thenComparing(Mention::start));
		return new Uses(all);
	}

	private static List<Mention> inRules(Manuscript manuscript, String path) {
		return RuleText.of(manuscript.text(path)).blocks().stream().flatMap(b -> RuleMentions.of(path, b, manuscript.book().catalogue()).stream()).toList();
	}

	/** @return what the word at {@code offset} of the rules, table, job or settings at {@code path} stands for; empty for other words */
	public static Optional<Thing> at(Manuscript manuscript, String path, int offset) {
		if (path.startsWith("tables/")) {
			return TableMentions.at(path, manuscript.text(path), offset, manuscript.book().catalogue());
		} else if (path.startsWith("jobs/")) {
			return JobMentions.at(manuscript.text(path), offset, manuscript.book().catalogue());
		} else if (path.equals(ShopSettings.FILE)) {
			return ShopMentions.at(manuscript.book().settings(), manuscript.text(path), offset);
		}
		return inRules(manuscript, path).stream().filter(m -> m.start() <= offset && offset <= m.end())
				.min(Comparator.comparingInt(m -> m.end() - m.start())).map(Mention::thing);
	}

	/**
	 * @param row of the table at {@code path}, from 0; -1 for its headings
	 * @param column from 0
	 * @return what the cell stands for: its first value if that is a thing of its own, or else what the column is about
	 */
	public static Optional<Thing> inCell(Manuscript manuscript, String path, int row, int column) {
		return TableMentions.in(path, manuscript.text(path), row, column, manuscript.book().catalogue());
	}

	/** @return what a job says in {@code field}: the answer if that is a thing of its own, or else the field */
	public static Thing value(FactKind kind, Field field, Answer<Value> answer) {
		Thing about = new Thing.OfField(kind, field);
		return answer.value().flatMap(v -> Values.of(about, v)).orElse(about);
	}

	/** @return the finding or rule that {@code item} of what a job expects names; empty when it names none */
	public static Optional<Thing> expected(ExpectedItem item) {
		return JobMentions.named(item);
	}

	/** @return every mention, by file and place */
	public List<Mention> all() {
		return all;
	}

	/** @return where {@code thing} is mentioned, by file and place */
	public List<Mention> of(Thing thing) {
		return all.stream().filter(m -> m.thing().equals(thing)).toList();
	}

	/** @return where {@code thing} comes from: what the shop says of a setting of its own, the rules that make a finding or propose a setting; empty for what the catalogue defines */
	public List<Mention> definitions(Thing thing) {
		return of(thing).stream().filter(Mention::defines).sorted(Comparator.comparing(m -> !m.path().equals(ShopSettings.FILE))).toList();
	}
}
