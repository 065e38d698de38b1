package org.setwright.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setwright.trade.catalogue.Catalogue;

/** Reads the folder of a rule book. */
public final class BookReader {
	private final Catalogue trade;
	private final List<Problem> problems = new ArrayList<>();
	private final BookFiles folder;

	private BookReader(Path root, Catalogue trade, Map<String, String> typed) {
		this.trade = trade;
		BookFolder saved = new BookFolder(root, problems::add);
		folder = typed.isEmpty() ? saved : new TypedFiles(saved, typed);
	}

	private BookReader(BookFiles files, Catalogue trade) {
		this.trade = trade;
		folder = files;
	}

	/**
	 * Reads a book that does not stand in a folder, such as an earlier edition. Never throws for what the files hold.
	 *
	 * @param folder where the book has its place, absolute; nothing is read there
	 * @param files the bytes of its files by their paths below the book, with forward slashes
	 * @param trade which facts and settings there are, apart from those the book adds
	 */
	public static Book read(Path folder, Map<String, byte[]> files, Catalogue trade) {
		return new BookReader(new FilesInHand(files), trade).book(folder);
	}

	/**
	 * Never throws for what the folder holds, also when there is none. Nothing outside the folder is read.
	 *
	 * @param folder of the book
	 * @param trade which facts and settings there are, apart from those the book adds
	 * @return everything that could be read, and every problem found. Only tables and jobs without errors of their own are
	 *         in it, so that nothing runs on half of a file.
	 */
	public static Book read(Path folder, Catalogue trade) {
		return read(folder, trade, Map.of());
	}

	/**
	 * The same with what is being typed in place of what is saved.
	 *
	 * @param typed texts by their paths below the book, with forward slashes
	 */
	public static Book read(Path folder, Catalogue trade, Map<String, String> typed) {
		Path given = folder.toAbsolutePath().normalize();
		try {
			if (Files.isDirectory(given)) {
				BookReader reader = new BookReader(given.toRealPath(), trade, typed);
				return reader.book(given);
			}
		} catch (IOException unreachable) {
			return none(given, trade, "The folder of the book cannot be read.", "Check who may read it.");
		}
		return Files.exists(given) ? none(given, trade, "This is a file, and a book is a folder.", "Name the folder that holds book.yaml.")
				: none(given, trade, "There is no such folder.", "Check the name, or make a new book there.");
	}

	/**
	 * @param folder of a book; it need not exist
	 * @param trade which facts and settings there are, apart from those the book adds
	 * @return what the book may speak of, as far as what it adds can be read; nothing else of the book is looked at
	 */
	public static Catalogue catalogue(Path folder, Catalogue trade) {
		try {
			return new BookReader(folder.toRealPath(), trade, Map.of()).settings().catalogue();
		} catch (IOException unreachable) {
			return trade;
		}
	}

	private static Book none(Path folder, Catalogue trade, String what, String remedy) {
		return new Book(folder, name(folder), trade, List.of(), List.of(), List.of())
				.withProblems(List.of(Problem.error(Position.whole(""), what, remedy)));
	}

	private Book book(Path given) {
		BookDetails details = details();
		ShopSettings settings = settings();
		List<Book.RuleFile> rules = rules();
		List<Table> tables = tables();
		List<JobCase> jobs = jobs(settings.catalogue());
		if (rules.isEmpty() && tables.isEmpty() && problems.isEmpty()) {
			problems.add(Problem.warning(Position.whole(""), "The book has no rules, so every setting stays open.",
					"Write rules in files rules/*.drl, or tables in files tables/*.csv."));
		}
		problems.sort(Comparator.comparing(Problem::at));
		String name = details.name().isBlank() ? name(given) : details.name();
		return new Book(given, name, details.description(), details.floors(), details.signOff(), settings, rules, tables, jobs, problems);
	}

	private BookDetails details() {
		FileContents contents = folder.read(BookDetails.FILE);
		if (contents.text().isEmpty()) {
			Problem why = contents.problem().orElseThrow();
			problems.add(why.what().startsWith("There is no such file")
					? Problem.error(why.at(), "The folder holds no " + BookDetails.FILE + ", so it is no rule book yet.",
							"Make the file with the lines \"book: <name of the book>\" and \"format: 1\", or open another folder.")
					: why);
			return new BookDetails("", "", Floors.NONE, SignOff.NOT_DEMANDED, List.of());
		}
		BookDetails details = BookDetails.read(contents.text().get());
		problems.addAll(details.problems());
		return details;
	}

	private ShopSettings settings() {
		ShopSettings[] settings = { ShopSettings.none(trade) };
		if (folder.has(ShopSettings.FILE)) {
			text(ShopSettings.FILE, text -> {
				ShopSettingsText read = ShopSettingsReader.read(text, trade);
				problems.addAll(read.problems());
				settings[0] = read.settings();
			});
		}
		return settings[0];
	}

	private List<Book.RuleFile> rules() {
		List<Book.RuleFile> rules = new ArrayList<>();
		for (String path : folder.list("rules", ".drl")) {
			text(path, text -> rules.add(new Book.RuleFile(path, text)));
		}
		return rules;
	}

	private List<Table> tables() {
		List<Table> tables = new ArrayList<>();
		for (String path : folder.list("tables", ".csv")) {
			text(path, text -> {
				TableText read = TableReader.read(path, text);
				problems.addAll(read.problems());
				if (read.sound()) {
					tables.add(read.table());
				}
			});
		}
		return tables;
	}

	private List<JobCase> jobs(Catalogue catalogue) {
		List<JobCase> jobs = new ArrayList<>();
		Map<String, String> pathByName = new HashMap<>();
		for (String path : folder.list("jobs", ".yaml")) {
			text(path, text -> {
				JobText read = JobReader.read(path, text, catalogue);
				problems.addAll(read.problems());
				if (alone(read, pathByName) && read.sound()) {
					jobs.add(read.job());
				}
			});
		}
		return jobs;
	}

	private boolean alone(JobText read, Map<String, String> pathByName) {
		boolean named = read.nameAt().line() > 0;
		String other = !named ? null : pathByName.putIfAbsent(Keys.normal(read.job().name()), read.job().path());
		if (other != null) {
			problems.add(Problem.error(read.nameAt(), "There is already a job called " + Misfit.quoted(read.job().name())
					+ ", in " + other + ".", "Give one of the two another name."));
		}
		return other == null;
	}

	private void text(String path, java.util.function.Consumer<String> use) {
		FileContents contents = folder.read(path);
		contents.problem().ifPresent(problems::add);
		contents.text().ifPresent(use);
	}

	private static String name(Path folder) {
		return folder.getFileName() == null ? folder.toString() : folder.getFileName().toString();
	}
}
