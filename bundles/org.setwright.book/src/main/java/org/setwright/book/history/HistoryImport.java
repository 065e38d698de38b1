package org.setwright.book.history;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.setwright.book.JobCase;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.book.Nearest;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.book.history.HistoryResult.Watcher;
import org.setwright.trade.catalogue.Catalogue;

/**
 * Makes a job file of every row of a CSV file with headings. All of them or none: the files are first written to a folder
 * beside the one they are for, and moved only when every row could be read.
 */
public final class HistoryImport {
	private static final int LONGEST_FILE_NAME = 60;
	private static final int BYTE_ORDER_MARK = 0xFEFF;
	private final String file;
	private final Catalogue catalogue;
	private final Mapping mapping;
	private final Set<String> names = new HashSet<>();
	private final List<Problem> problems = new ArrayList<>();
	private int more;

	/** @param file name of the CSV file, for positions */
	public HistoryImport(String file, Catalogue catalogue, Mapping mapping) {
		this.file = file;
		this.catalogue = catalogue;
		this.mapping = mapping;
	}

	/** @return the headings of a CSV file */
	public static List<String> headings(Reader csv) throws IOException {
		try (CSVParser rows = parser(csv)) {
			return rows.getHeaderNames();
		}
	}

	/** @return how many rows a CSV file has, its headings not counted */
	public static int rows(Reader csv) throws IOException {
		try (CSVParser rows = parser(csv)) {
			int number = 0;
			for (var row = rows.iterator(); row.hasNext(); row.next()) {
				number++;
			}
			return number;
		} catch (UncheckedIOException | IllegalArgumentException | IllegalStateException unreadable) {
			return 0;
		}
	}

	private static CSVParser parser(Reader csv) throws IOException {
		BufferedReader reader = new BufferedReader(csv);
		reader.mark(1);
		if (reader.read() != BYTE_ORDER_MARK) {
			reader.reset();
		}
		return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true).setIgnoreSurroundingSpaces(true)
				.setAllowMissingColumnNames(false).get().parse(reader);
	}

	/**
	 * @param csv read to its end, row by row
	 * @param jobs the folder the files are for; made when missing
	 * @param taken names of jobs that exist already
	 * @param watcher told after every job
	 * @throws IOException when the file cannot be read or the folder cannot be written; nothing is left of it then
	 */
	public HistoryResult run(Reader csv, Path jobs, Set<String> taken, Watcher watcher) throws IOException {
		taken.forEach(n -> names.add(key(n)));
		Path parent = jobs.toAbsolutePath().getParent();
		Files.createDirectories(parent);
		Path waiting = Files.createDirectory(parent.resolve(".importing-" + UUID.randomUUID()));
		try (CSVParser rows = parser(csv)) {
			Map<String, Target> targets = targets(rows.getHeaderNames());
			int done = 0;
			for (CSVRecord row : problems.isEmpty() ? rows : List.<CSVRecord>of()) {
				job(row, targets, waiting, jobs);
				done++;
				if (!watcher.goOn(done, 0)) {
					return new HistoryResult(done, problems, more, true);
				}
			}
			if (problems.isEmpty()) {
				move(waiting, jobs);
			}
			return new HistoryResult(done, problems, more, false);
		} catch (UncheckedIOException | IllegalArgumentException | IllegalStateException unreadable) {
			more = 0;
			problems.clear();
			problem(Problem.error(Position.whole(file), "The file is no CSV that can be read (" + unreadable.getMessage() + ").",
					"Save it anew as CSV with commas, one heading for each column, and quotation marks where needed."));
			return new HistoryResult(0, problems, more, false);
		} finally {
			delete(waiting);
		}
	}

	private Map<String, Target> targets(List<String> headings) {
		Map<String, Target> targets = new LinkedHashMap<>();
		for (String heading : headings) {
			Optional<Target> target = Target.of(mapping.column(heading).to(), catalogue);
			if (target.isEmpty()) {
				String near = Nearest.to(heading, Target.names(catalogue)).map(n -> "; perhaps \"" + n + "\" is meant").orElse("");
				problem(Problem.error(new Position(file, 1, 0), "Nobody says what the column \"" + heading + "\" means" + near + ".",
						"Say it in the mapping, or write \"ignore\" there."));
			} else if (targets.containsValue(target.get()) && !(target.get() instanceof Target.Ignored)) {
				problem(Problem.error(new Position(file, 1, 0), "Two columns both say \"" + target.get().name() + "\".", "Map one of them to \"ignore\"."));
			} else {
				targets.put(heading, target.get());
			}
		}
		return targets;
	}

	private void job(CSVRecord row, Map<String, Target> targets, Path waiting, Path jobs) throws IOException {
		Position at = new Position(file, (int) row.getParser().getCurrentLineNumber(), 0);
		RowReader reader = new RowReader(at);
		if (!row.isConsistent()) {
			problem(Problem.error(at, "The row has " + row.size() + " cells, and there are " + targets.size() + " headings.", "Add or remove commas."));
			return;
		}
		targets.forEach((heading, target) -> reader.cell(heading, target, row.get(heading), text(heading, target, row.get(heading))));
		JobCase job = reader.job("jobs/x.yaml");
		if (reader.problems().isEmpty() && !names.add(key(job.name()))) {
			problem(Problem.error(at, "There is already a job called \"" + job.name() + "\".", "Give one of the two another name."));
		}
		reader.problems().forEach(this::problem);
		if (problems.isEmpty()) {
			write(job, at, waiting, jobs);
		}
	}

	/** Notes are taken as they are. */
	private String text(String heading, Target target, String cell) {
		return target instanceof Target.Notes ? cell : mapping.column(heading).read(cell);
	}

	private void write(JobCase job, Position at, Path waiting, Path jobs) throws IOException {
		try {
			Files.writeString(free(job.name(), waiting, jobs), new JobWriter(catalogue).write(job));
		} catch (JobNotWritten refused) {
			problem(Problem.error(at, refused.problem().what(), refused.problem().remedy()));
		}
	}

	private static Path free(String name, Path waiting, Path jobs) {
		String words = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
		String stem = words.isEmpty() ? "job" : words.substring(0, Math.min(words.length(), LONGEST_FILE_NAME));
		String file = stem + ".yaml";
		for (int i = 2; Files.exists(waiting.resolve(file)) || Files.exists(jobs.resolve(file)); i++) {
			file = stem + "-" + i + ".yaml";
		}
		return waiting.resolve(file);
	}

	/** In one step when there is no folder yet. Else file by file; should one not move, those moved before it move back. */
	private static void move(Path waiting, Path jobs) throws IOException {
		if (!Files.exists(jobs, LinkOption.NOFOLLOW_LINKS)) {
			Files.move(waiting, jobs, StandardCopyOption.ATOMIC_MOVE);
			return;
		}
		List<Path> moved = new ArrayList<>();
		try (DirectoryStream<Path> files = Files.newDirectoryStream(waiting)) {
			for (Path from : files) {
				Files.move(from, jobs.resolve(from.getFileName()));
				moved.add(from.getFileName());
			}
		} catch (IOException stuck) {
			for (Path name : moved) {
				Files.move(jobs.resolve(name), waiting.resolve(name));
			}
			throw stuck;
		}
	}

	private static void delete(Path folder) throws IOException {
		if (!Files.exists(folder)) {
			return;
		}
		try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
			for (Path file : files) {
				Files.delete(file);
			}
		}
		Files.delete(folder);
	}

	private void problem(Problem problem) {
		if (problems.size() < HistoryResult.MOST_LISTED) {
			problems.add(problem);
		} else {
			more++;
		}
	}

	private static String key(String name) {
		return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
	}
}
