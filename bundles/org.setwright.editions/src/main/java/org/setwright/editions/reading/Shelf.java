package org.setwright.editions.reading;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.book.Problem;
import org.setwright.book.ShopSettingText;
import org.setwright.book.ShopSettings;
import org.setwright.book.ShopSettingsReader;
import org.setwright.book.ShopSettingsText;
import org.setwright.book.TableReader;
import org.setwright.book.TableText;
import org.setwright.editions.git.Content;
import org.setwright.editions.git.Repo;
import org.setwright.editions.git.TreeContent;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.written.RuleFiles;
import org.setwright.editions.written.TableFiles;
import org.setwright.editions.written.WrittenRule;
import org.setwright.engine.Compilation;
import org.setwright.engine.Edition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.RuleParser;
import org.setwright.engine.tables.TableRules;
import org.setwright.trade.catalogue.Catalogue;

/** Keeps what was read of editions, file by file, so that a file that many editions share is read once. Thread-safe. */
public final class Shelf {
	private final Repo repo;
	private final Catalogue trade;
	private final Map<String, ShopSettingsText> settings = new ConcurrentHashMap<>();
	private final Map<String, List<WrittenRule>> written = new ConcurrentHashMap<>();
	private final Map<String, Optional<List<Rule>>> rules = new ConcurrentHashMap<>();
	private final Map<String, JobText> jobs = new ConcurrentHashMap<>();
	private final Map<String, BookAt> books = new ConcurrentHashMap<>();
	private final Map<String, Compilation> compiled = new ConcurrentHashMap<>();

	/** @param trade which facts and settings there are, apart from those a book adds */
	public Shelf(Repo repo, Catalogue trade) {
		this.repo = repo;
		this.trade = trade;
	}

	/** @return every fact and setting that {@code book} may speak of, as far as what it adds can be read */
	public Catalogue catalogue(BookAt book) throws NotDone {
		return settings(book).settings().catalogue();
	}

	private ShopSettingsText settings(BookAt book) throws NotDone {
		String name = book.content().names().get(ShopSettings.FILE);
		if (name == null) {
			return new ShopSettingsText(ShopSettings.none(trade), List.of());
		}
		ShopSettingsText known = settings.get(name);
		if (known == null) {
			known = ShopSettingsReader.read(text(book.content(), ShopSettings.FILE), trade);
			settings.put(name, known);
		}
		return known;
	}

	/** @return the settings that {@code book} adds, in file order; empty when their file has errors */
	public Optional<List<ShopSettingText>> ownSettings(BookAt book) throws NotDone {
		return book.content().names().containsKey(ShopSettings.FILE) ? ShopSettingText.all(text(book.content(), ShopSettings.FILE), trade)
				: Optional.of(List.of());
	}

	/** @return {@code book} with what {@code other} adds to the settings of the trade, as if that alone had changed */
	public BookAt withSettingsOf(BookAt book, BookAt other) {
		return new BookAt(Optional.empty(), OtherSettings.of(book.content(), other.content()), book.rules());
	}

	/** What a file is known by: what it says depends on the settings the book adds. */
	private static String key(BookAt book, String path) {
		String added = book.content().names().get(ShopSettings.FILE);
		return path + "@" + book.content().names().get(path) + (added == null ? "" : "@" + added);
	}

	/** @return the book as it was at {@code edition} */
	public BookAt at(Kept edition) throws NotDone {
		return at(edition, edition.id().hash());
	}

	/** @return the book as it is at {@code commit}, which holds {@code edition} and perhaps newer remarks */
	public BookAt at(Kept edition, String commit) throws NotDone {
		BookAt known = books.get(commit);
		if (known == null) {
			known = of(Optional.of(edition), TreeContent.of(repo, commit));
			books.put(commit, known);
		}
		return known;
	}

	/** @return the book that {@code content} holds, as work in hand */
	public BookAt inHand(Content content) throws NotDone {
		return of(Optional.empty(), content);
	}

	private BookAt of(Optional<Kept> edition, Content content) throws NotDone {
		List<WrittenRule> all = new ArrayList<>();
		for (Map.Entry<String, String> file : content.names().entrySet()) {
			String path = file.getKey();
			boolean rule = isFile(path, "rules", ".drl");
			if (rule || isFile(path, "tables", ".csv")) {
				String key = path + "@" + file.getValue();
				List<WrittenRule> known = written.get(key);
				if (known == null) {
					String text = text(content, path);
					known = rule ? RuleFiles.rules(path, text) : TableFiles.rows(path, text);
					written.put(key, known);
				}
				all.addAll(known);
			}
		}
		return new BookAt(edition, content, all);
	}

	/** @return the text of a file of {@code content}; bytes that are no text read as question marks */
	public static String text(Content content, String path) throws NotDone {
		return new String(content.bytes(path), StandardCharsets.UTF_8);
	}

	/**
	 * @return the rules of the engine, the same objects for files that hold the same; empty when the book cannot run because
	 *         some rule or table of it has errors
	 */
	public Optional<List<Rule>> rules(BookAt book) throws NotDone {
		if (!settings(book).sound()) {
			return Optional.empty();
		}
		List<Rule> all = new ArrayList<>();
		for (String path : book.content().names().keySet()) {
			boolean rule = isFile(path, "rules", ".drl");
			if (rule || isFile(path, "tables", ".csv")) {
				String key = key(book, path);
				Optional<List<Rule>> known = rules.get(key);
				if (known == null) {
					String text = text(book.content(), path);
					known = rule ? parsed(path, text, catalogue(book)) : looked(path, text, catalogue(book));
					rules.put(key, known);
				}
				if (known.isEmpty()) {
					return Optional.empty();
				}
				all.addAll(known.get());
			}
		}
		return all.stream().map(Rule::name).distinct().count() < all.size() ? Optional.empty() : Optional.of(all);
	}

	private Optional<List<Rule>> parsed(String path, String text, Catalogue catalogue) {
		RuleParser.Parsed parsed = RuleParser.parse(path, text, catalogue);
		return Optional.of(parsed.rules()).filter(r -> sound(parsed.problems()));
	}

	private Optional<List<Rule>> looked(String path, String text, Catalogue catalogue) {
		List<Problem> problems = new ArrayList<>();
		TableText table = TableReader.read(path, text);
		List<Rule> rows = TableRules.of(table.table(), catalogue, problems);
		return Optional.of(rows).filter(r -> table.sound() && sound(problems));
	}

	private static boolean sound(List<Problem> problems) {
		return problems.stream().noneMatch(p -> p.severity() == Problem.Severity.ERROR);
	}

	/** @return what the file {@code path} of {@code book} says of a job */
	public JobText job(BookAt book, String path) throws NotDone {
		String key = key(book, path);
		JobText known = jobs.get(key);
		if (known == null) {
			known = JobReader.read(path, text(book.content(), path), catalogue(book));
			jobs.put(key, known);
		}
		return known;
	}

	/** @return the whole book, read as from its folder */
	public Book book(BookAt at) throws NotDone {
		Map<String, byte[]> bytes = new HashMap<>();
		for (String path : at.content().names().keySet()) {
			bytes.put(path, at.content().bytes(path));
		}
		return BookReader.read(repo.folder(), bytes, trade);
	}

	/** @return the book compiled for the rule engine */
	public Compilation compiled(BookAt at) throws NotDone {
		String key = String.join("\n", at.content().names().entrySet().stream().map(Object::toString).toList());
		Compilation known = compiled.get(key);
		if (known == null) {
			known = Edition.compile(book(at));
			compiled.put(key, known);
		}
		return known;
	}

	private static boolean isFile(String path, String folder, String ending) {
		return path.startsWith(folder + "/") && path.endsWith(ending) && path.indexOf('/', folder.length() + 1) < 0;
	}
}
