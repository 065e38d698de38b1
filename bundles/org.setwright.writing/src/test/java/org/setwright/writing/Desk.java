package org.setwright.writing;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.book.Floors;
import org.setwright.book.JobCase;
import org.setwright.book.JobReader;
import org.setwright.book.Problem;
import org.setwright.book.ShopSettings;
import org.setwright.book.ShopSettingsReader;
import org.setwright.book.ShopSettingsText;
import org.setwright.book.SignOff;
import org.setwright.book.Table;
import org.setwright.book.TableReader;
import org.setwright.engine.Edition;
import org.setwright.trade.Trade;
import org.setwright.writing.text.TextEdit;

/** A small book on the desk: its files by path, read as the program reads them. */
public final class Desk {
	public static final String FILE = "rules/test.drl";
	private final Map<String, String> texts = new LinkedHashMap<>();

	/** A desk with one file of rules. */
	public static Desk with(String rules) {
		return new Desk().and(FILE, rules);
	}

	/** @return this desk, with one more file or another text of it */
	public Desk and(String path, String text) {
		texts.put(path, text);
		return this;
	}

	public String text(String path) {
		return texts.get(path);
	}

	public Manuscript manuscript() {
		return new Manuscript(book(), path -> Optional.ofNullable(texts.get(path)));
	}

	public Book book() {
		List<Book.RuleFile> rules = files("rules/").map(e -> new Book.RuleFile(e.getKey(), e.getValue())).toList();
		List<Table> tables = files("tables/").map(e -> TableReader.read(e.getKey(), e.getValue()).table()).toList();
		ShopSettingsText settings = ShopSettingsReader.read(texts.getOrDefault(ShopSettings.FILE, ""), Trade.catalogue());
		List<JobCase> jobs = files("jobs/").map(e -> JobReader.read(e.getKey(), e.getValue(), settings.settings().catalogue()))
				.filter(j -> j.sound()).map(j -> j.job()).toList();
		return new Book(Path.of("").toAbsolutePath(), "Test", "", Floors.NONE, SignOff.NOT_DEMANDED, settings.settings(), rules, tables, jobs,
				settings.problems());
	}

	private java.util.stream.Stream<Map.Entry<String, String>> files(String folder) {
		return texts.entrySet().stream().filter(e -> e.getKey().startsWith(folder)).sorted(Map.Entry.comparingByKey());
	}

	/** @return what is wrong with rules and tables */
	public List<Problem> problems() {
		return Edition.compile(book()).problems();
	}

	/** Makes edits to several files. */
	public Desk apply(Map<String, List<TextEdit>> edits) {
		edits.forEach((path, made) -> texts.put(path, TextEdit.apply(texts.getOrDefault(path, ""), made)));
		return this;
	}

	/** A rule with everything but conditions and outcome filled in. */
	public static String rule(String name, String when, String then) {
		return "rule \"" + name + "\"\n    @authority( shop practice )\n    @because( \"Testing.\" )\n    @source( common practice )\nwhen\n    "
				+ when + "\nthen\n    " + then + "\nend\n";
	}
}
