package org.setwright.book.history;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
 * beside the one they are for, and moved only when every row could be read; see {@link UnfinishedImports} for what happens
 * should the program be cut off in the middle of that.
 */
public final class HistoryImport {
	private static final int BYTE_ORDER_MARK = 0xFEFF;
	private final String file;
	private final Catalogue catalogue;
	private final Mapping mapping;
	private final Set<String> names = new HashSet<>();
	private final Staging.Disk disk;
	private final FaultList faults;

	/** @param file name of the CSV file, for positions */
	public HistoryImport(String file, Catalogue catalogue, Mapping mapping) {
		this(file, catalogue, mapping, HistoryResult.MOST_LISTED);
	}

	/** @param mostListed how many faults to list at most */
	public HistoryImport(String file, Catalogue catalogue, Mapping mapping, int mostListed) {
		this(file, catalogue, mapping, mostListed, Staging.Disk.REAL);
	}

	HistoryImport(String file, Catalogue catalogue, Mapping mapping, int mostListed, Staging.Disk disk) {
		this.file = file;
		this.catalogue = catalogue;
		this.mapping = mapping;
		this.disk = disk;
		faults = new FaultList(mostListed);
	}

	/** What is done with a job that could be read. @param text of its file */
	private interface Taker {
		void take(JobCase job, String text) throws IOException;
	}

	/** @return the headings of a CSV file */
	public static List<String> headings(Reader csv) throws IOException {
		try (CSVParser rows = parser(csv)) {
			return rows.getHeaderNames();
		}
	}

	/**
	 * @param most how many rows to read
	 * @return how a CSV file begins
	 * @throws IOException when it cannot be read, or is no CSV with a heading for each column; says why in a sentence
	 */
	public static Preview preview(Reader csv, int most) throws IOException {
		try (CSVParser rows = parser(csv)) {
			List<List<String>> first = new ArrayList<>();
			var next = rows.iterator();
			while (first.size() < most && next.hasNext()) {
				first.add(next.next().toList());
			}
			return new Preview(rows.getHeaderNames(), first, next.hasNext());
		} catch (IOException | UncheckedIOException | IllegalArgumentException | IllegalStateException unreadable) {
			Problem why = noCsv("", unreadable);
			throw new IOException(why.what() + " " + why.remedy(), unreadable);
		}
	}

	private static Problem noCsv(String file, Exception unreadable) {
		boolean letters = unreadable instanceof CharacterCodingException || unreadable.getCause() instanceof CharacterCodingException;
		return letters ? Problem.error(Position.whole(file), "The file holds letters that are not written as UTF-8.", "Save it anew as CSV in UTF-8.")
				: Problem.error(Position.whole(file), "The file is no CSV that can be read (" + unreadable.getMessage() + ").",
						"Save it anew as CSV with commas, one heading for each column, and quotation marks where needed.");
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
	 * Imports; use an object of this class for one import only.
	 *
	 * @param csv read to its end, row by row
	 * @param jobs the folder the files are for; made when missing
	 * @param taken names of jobs that exist already
	 * @param watcher told after every job
	 * @throws ImportCutOff when the folder could not be written any more, not even to take back what was there already
	 * @throws IOException when the file cannot be read or the folder cannot be written; nothing is left of it then
	 */
	public HistoryResult run(Reader csv, Path jobs, Set<String> taken, Watcher watcher) throws IOException {
		Staging staging = Staging.beside(jobs, disk);
		try (staging) {
			HistoryResult result = read(csv, taken, watcher, (job, text) -> {
				if (faults.isEmpty()) {
					Files.writeString(staging.files().resolve(JobFileName.of(job.name(), staging.files(), jobs)), text);
				}
			});
			if (result.cancelled() || !result.faults().isEmpty()) {
				staging.discard();
			} else {
				staging.place(jobs, watcher);
			}
			return result;
		} catch (IOException | RuntimeException failed) {
			if (staging.onItsWay()) {
				throw new ImportCutOff(failed);
			}
			staging.discardIfThere();
			throw failed;
		}
	}

	/** Reads all rows as {@link #run} does, and writes nothing. */
	public HistoryResult check(Reader csv, Set<String> taken, Watcher watcher) throws IOException {
		return read(csv, taken, watcher, (job, text) -> {
			// it can be written, and that is all
		});
	}

	private HistoryResult read(Reader csv, Set<String> taken, Watcher watcher, Taker taker) throws IOException {
		taken.forEach(n -> names.add(key(n)));
		try (CSVParser rows = parser(csv)) {
			Map<String, Target> targets = targets(rows.getHeaderNames());
			int done = 0;
			for (CSVRecord row : faults.isEmpty() ? rows : List.<CSVRecord>of()) {
				job(row, targets, taker);
				done++;
				if (!watcher.goOn(done, 0)) {
					return faults.result(done, true);
				}
			}
			return faults.result(done, false);
		} catch (CharacterCodingException | UncheckedIOException | IllegalArgumentException | IllegalStateException unreadable) {
			faults.only(Fault.of(noCsv(file, unreadable)));
			return faults.result(0, false);
		}
	}

	private Map<String, Target> targets(List<String> headings) {
		Map<String, Target> targets = new LinkedHashMap<>();
		for (String heading : headings) {
			Optional<Target> target = Target.of(mapping.column(heading).to(), catalogue);
			if (target.isEmpty()) {
				String near = Nearest.to(heading, Target.names(catalogue)).map(n -> "; perhaps \"" + n + "\" is meant").orElse("");
				faults.add(new Fault(new Position(file, 1, 0), 1, "", "Nobody says what the column \"" + heading + "\" means" + near + ".",
						"Say it in the mapping, or write \"ignore\" there."));
			} else if (targets.containsValue(target.get()) && !(target.get() instanceof Target.Ignored)) {
				faults.add(new Fault(new Position(file, 1, 0), 1, "", "Two columns both say \"" + target.get().name() + "\".", "Map one of them to \"ignore\"."));
			} else {
				targets.put(heading, target.get());
			}
		}
		return targets;
	}

	private void job(CSVRecord row, Map<String, Target> targets, Taker taker) throws IOException {
		Position at = new Position(file, (int) row.getParser().getCurrentLineNumber(), 0);
		int number = (int) row.getRecordNumber() + 1;
		if (!row.isConsistent()) {
			faults.add(new Fault(at, number, "", "The row has " + row.size() + " cells, and there are " + targets.size() + " headings.", "Add or remove commas."));
			return;
		}
		RowReader reader = new RowReader(at, number);
		targets.forEach((heading, target) -> reader.cell(heading, target, row.get(heading), text(heading, target, row.get(heading))));
		JobCase job = reader.job("jobs/x.yaml");
		if (reader.faults().isEmpty() && !names.add(key(job.name()))) {
			faults.add(new Fault(at, number, "", "There is already a job called \"" + job.name() + "\".", "Give one of the two another name."));
		} else if (reader.faults().isEmpty()) {
			take(job, at, number, taker);
		}
		reader.faults().forEach(faults::add);
	}

	private void take(JobCase job, Position at, int number, Taker taker) throws IOException {
		try {
			taker.take(job, new JobWriter(catalogue).write(job));
		} catch (JobNotWritten refused) {
			faults.add(new Fault(at, number, "", refused.problem().what(), refused.problem().remedy()));
		}
	}

	/** Notes are taken as they are. */
	private String text(String heading, Target target, String cell) {
		return target instanceof Target.Notes ? cell : mapping.column(heading).read(cell);
	}

	private static String key(String name) {
		return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
	}
}
