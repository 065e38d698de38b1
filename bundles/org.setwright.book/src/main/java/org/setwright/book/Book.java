package org.setwright.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.Catalogue;

/**
 * A rule book as read from its folder: everything parsed that can be parsed without knowing the rule language, and
 * every problem met. Immutable.
 *
 * @param folder absolute path of the book
 * @param name what the shop calls it
 * @param description what it is for; may be empty
 * @param floors what the shop demands of its own jobs
 * @param signOff whether an edition has to be signed before it goes out
 * @param settings what may be proposed: what the trade knows, and what the shop has added
 * @param ruleFiles {@code rules/*.drl}, by path
 * @param tables {@code tables/*.csv}, by path
 * @param jobs {@code jobs/*.yaml}, by path
 * @param problems what is wrong with the files, by position
 */
public record Book(Path folder, String name, String description, Floors floors, SignOff signOff, ShopSettings settings,
		List<RuleFile> ruleFiles, List<Table> tables, List<JobCase> jobs, List<Problem> problems) {
	/** No book holds more jobs. */
	public static final int MOST_JOBS = BookFolder.MOST_FILES;

	public Book {
		ruleFiles = List.copyOf(ruleFiles);
		tables = List.copyOf(tables);
		jobs = List.copyOf(jobs);
		problems = List.copyOf(problems);
	}

	/** A book that demands nothing and adds no settings. @param trade which facts and settings there are */
	public Book(Path folder, String name, Catalogue trade, List<RuleFile> ruleFiles, List<Table> tables, List<JobCase> jobs) {
		this(folder, name, "", Floors.NONE, SignOff.NOT_DEMANDED, ShopSettings.none(trade), ruleFiles, tables, jobs, List.of());
	}

	/** A book that holds nothing yet. @param trade which facts and settings there are */
	public static Book empty(Path folder, Catalogue trade) {
		return new Book(folder, "", trade, List.of(), List.of(), List.of());
	}

	/** @return every fact and setting the book may speak of */
	public Catalogue catalogue() {
		return settings.catalogue();
	}

	/** A file of rules. @param path below the book folder @param text as read */
	public record RuleFile(String path, String text) {
	}

	/** @return the job case in file {@code path} or called {@code path} (any case), or empty */
	public Optional<JobCase> job(String path) {
		return jobs.stream().filter(j -> j.path().equals(path) || j.name().equalsIgnoreCase(path)).findFirst();
	}

	/** @return the same book with other rules, tables and jobs */
	public Book with(List<RuleFile> otherRules, List<Table> otherTables, List<JobCase> otherJobs) {
		return new Book(folder, name, description, floors, signOff, settings, otherRules, otherTables, otherJobs, problems);
	}

	/** @return the same book with other problems */
	public Book withProblems(List<Problem> others) {
		return new Book(folder, name, description, floors, signOff, settings, ruleFiles, tables, jobs, others);
	}

	/** @return the same book with the rule file {@code changed.path()} replaced or added, as while it is being typed */
	public Book withRules(RuleFile changed) {
		List<RuleFile> files = new java.util.ArrayList<>(ruleFiles);
		files.removeIf(f -> f.path().equals(changed.path()));
		files.add(changed);
		files.sort(java.util.Comparator.comparing(RuleFile::path));
		return with(files, tables, jobs);
	}
}
