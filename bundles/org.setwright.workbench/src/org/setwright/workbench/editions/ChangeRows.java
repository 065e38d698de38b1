package org.setwright.workbench.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.JobText;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.JobChange;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.compare.SettingChange;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.editions.signing.About;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.written.WrittenRule;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** What is different between two states of the book, rule by rule, setting by setting, job by job and file by file. */
final class ChangeRows {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.ChangeRows_what, 40),
			new RowTree.Column(Messages.ChangeRows_became, 28), new RowTree.Column(Messages.ChangeRows_where, 18),
			new RowTree.Column(Messages.ChangeRows_remarks, 14));

	private ChangeRows() {
	}

	/**
	 * @param matters what was remarked
	 * @return lines about a {@link RuleChange}, {@link SettingChange} or {@link FileTexts} each, below a heading for every kind of thing that changed
	 */
	static List<Row> of(BookChanges changes, List<Matter> matters) throws NotDone {
		List<Row> rules = changes.rules().stream().map(c -> rule(c, matters)).toList();
		List<Row> jobs = new ArrayList<>();
		for (JobChange job : changes.jobs()) {
			jobs.add(job(changes, job));
		}
		List<Row> files = new ArrayList<>();
		for (String path : changes.files()) {
			FileTexts texts = new FileTexts(path, text(changes.before(), Optional.of(path)), text(changes.after(), Optional.of(path)));
			files.add(new Row(Icon.WRITE, List.of(path, became(changes, path), path), texts));
		}
		List<Row> all = new ArrayList<>();
		group(all, Icon.RULE, Messages.ChangeRows_rules, rules);
		group(all, Icon.SETUP, Messages.ChangeRows_settings, changes.settings().stream().map(ChangeRows::setting).toList());
		group(all, Icon.JOB, Messages.ChangeRows_jobs, jobs);
		group(all, Icon.FOLDER, Messages.ChangeRows_files, files);
		return all;
	}

	private static void group(List<Row> all, Icon sign, String heading, List<Row> rows) {
		if (!rows.isEmpty()) {
			all.add(Row.heading(sign, NLS.bind(heading, rows.size()), rows));
		}
	}

	private static Row setting(SettingChange change) {
		Icon sign = change.before().isEmpty() ? Icon.ADD : change.after().isEmpty() ? Icon.REMOVE : change.wordsOnly() ? Icon.NOTE : Icon.WRITE;
		return new Row(sign, List.of(change.setting().setting().label(), change.what(), change.setting().at().file()), change);
	}

	private static Row rule(RuleChange change, List<Matter> matters) {
		return new Row(sign(change), List.of(change.rule().name(), change.what(), change.rule().file(), remarks(change, matters)), change);
	}

	/** How what was remarked on a rule stands, by its name now or before. */
	private static String remarks(RuleChange change, List<Matter> matters) {
		List<String> names = Stream.of(change.before(), change.after()).flatMap(Optional::stream).map(WrittenRule::name).toList();
		List<Matter> on = matters.stream().filter(m -> m.about() instanceof About.OfRule rule && names.contains(rule.name())).toList();
		long open = on.stream().filter(Matter::open).count();
		return on.isEmpty() ? "" : open > 0 ? NLS.bind(Messages.ChangeRows_open, open) : Messages.ChangeRows_settled; //$NON-NLS-1$
	}

	/** @return a sign of its own for everything that can become of a rule */
	static Icon sign(RuleChange change) {
		return switch (change.kind()) {
			case ADDED -> Icon.ADD;
			case REMOVED -> Icon.REMOVE;
			case CHANGED -> Icon.WRITE;
			case WORDING -> Icon.NOTE;
			case MOVED -> Icon.FOLDER;
			case SAME -> Icon.AS_EXPECTED;
		};
	}

	private static Row job(BookChanges changes, JobChange job) throws NotDone {
		Icon sign = job.before().isEmpty() ? Icon.ADD : job.after().isEmpty() ? Icon.REMOVE : job.wordsOnly() ? Icon.NOTE : Icon.WRITE;
		FileTexts texts = new FileTexts(job.job().path(), text(changes.before(), path(job.before())), text(changes.after(), path(job.after())));
		return new Row(sign, List.of(job.job().name(), job.what(), job.job().path()), texts);
	}

	private static Optional<String> path(Optional<JobText> job) {
		return job.map(j -> j.job().path());
	}

	private static String text(BookAt book, Optional<String> path) throws NotDone {
		return path.isPresent() && book.content().names().containsKey(path.get()) ? Shelf.text(book.content(), path.get()) : ""; //$NON-NLS-1$
	}

	private static String became(BookChanges changes, String path) {
		return !changes.before().content().names().containsKey(path) ? Messages.ChangeRows_added
				: !changes.after().content().names().containsKey(path) ? Messages.ChangeRows_removed : Messages.ChangeRows_changed;
	}
}
