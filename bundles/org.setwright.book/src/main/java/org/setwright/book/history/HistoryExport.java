package org.setwright.book.history;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.setwright.book.ExpectedItem;
import org.setwright.book.ItemList;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.book.Problem;
import org.setwright.book.history.HistoryResult.Watcher;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Value;

/**
 * Writes the job files of a folder as rows of a CSV file, with the headings an import understands. It goes through the files
 * twice, once for the columns that are needed and once for the rows, and keeps one job at a time. What was accepted stays
 * behind.
 */
public final class HistoryExport {
	private final Catalogue catalogue;
	private final FaultList faults = new FaultList(HistoryResult.MOST_LISTED);

	/** @param catalogue which facts and settings there are */
	public HistoryExport(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/**
	 * @param jobs the folder of the job files
	 * @param csv written as a whole, or not at all when a job cannot be read
	 * @param watcher told after every job of the second pass
	 * @throws IOException when the folder cannot be read or the file cannot be written
	 */
	public HistoryResult run(Path jobs, Path csv, Watcher watcher) throws IOException {
		List<Path> files = files(jobs);
		Set<String> columns = columns(files);
		if (!faults.isEmpty()) {
			return faults.result(files.size(), false);
		}
		Path waiting = csv.toAbsolutePath().resolveSibling(".exporting-" + UUID.randomUUID() + ".csv");
		try {
			int done = 0;
			try (CSVPrinter printer = new CSVPrinter(Files.newBufferedWriter(waiting), CSVFormat.RFC4180)) {
				printer.printRecord(columns);
				for (Path file : files) {
					Map<String, String> cells = cells(read(file).job());
					printer.printRecord(columns.stream().map(c -> cells.getOrDefault(c, "")).toList());
					if (!watcher.goOn(++done, files.size())) {
						return faults.result(done, true);
					}
				}
			}
			Files.move(waiting, csv, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
			return faults.result(done, false);
		} finally {
			Files.deleteIfExists(waiting);
		}
	}

	private static List<Path> files(Path jobs) throws IOException {
		List<Path> files = new ArrayList<>();
		try (DirectoryStream<Path> all = Files.newDirectoryStream(jobs, "*.yaml")) {
			all.forEach(files::add);
		}
		files.sort(null);
		return files;
	}

	private JobText read(Path file) throws IOException {
		return JobReader.read("jobs/" + file.getFileName(), Files.readString(file, StandardCharsets.UTF_8), catalogue);
	}

	/** Those that some job fills, in the order of the catalogue. */
	private Set<String> columns(List<Path> files) throws IOException {
		List<String> order = Target.names(catalogue);
		Set<String> columns = new TreeSet<>(Comparator.comparingInt((String c) -> rank(order, c)).thenComparing(c -> c));
		columns.add(Target.JOB);
		for (Path file : files) {
			JobText read = read(file);
			if (read.sound()) {
				columns.addAll(cells(read.job()).keySet());
			}
			read.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).forEach(p -> faults.add(Fault.of(p)));
		}
		return columns;
	}

	/** The second wire stands with the first. */
	private static int rank(List<String> order, String column) {
		int exact = order.indexOf(column);
		int first = exact >= 0 ? exact : order.indexOf(column.replaceFirst(" \\d+ ", " 1 ").replaceFirst(Target.BY + "$", ""));
		return first < 0 ? order.size() : first;
	}

	private Map<String, String> cells(JobCase job) {
		Map<String, String> cells = new LinkedHashMap<>();
		cells.put(Target.JOB, job.name());
		if (!job.notes().isEmpty()) {
			cells.put(Target.NOTES, job.notes());
		}
		job.job().entries().forEach((kind, entry) -> facts(kind, entry, cells));
		job.expected().forEach((setting, expectation) -> {
			if (expectation instanceof DecidedBy decided) {
				cells.put(new Target.Expected(setting, true).name(), decided.rule());
				decided.is().ifPresent(is -> cells.put(new Target.Expected(setting, false).name(), is.text()));
			} else {
				cells.put(new Target.Expected(setting, false).name(), expectation.text());
			}
		});
		for (ItemList list : ItemList.values()) {
			String items = job.items(list).stream().map(ExpectedItem::text).collect(Collectors.joining("\n"));
			if (!items.isEmpty()) {
				cells.put(new Target.Items(list).name(), items);
			}
		}
		return cells;
	}

	private static void facts(FactKind kind, Job.Entry entry, Map<String, String> cells) {
		List<Fact> facts = entry.facts();
		for (int i = 0; i < facts.size(); i++) {
			for (Field field : kind.fields()) {
				int item = i;
				kind.answer(facts.get(i), field).value().filter(v -> field.calculation().isEmpty()).map(Value::text)
						.ifPresent(text -> cells.put(new Target.Answer(kind, item, field).name(), text));
			}
		}
		if (entry.presence() == Job.Presence.NONE) {
			cells.put(new Target.Presence(kind).name(), "none");
		} else if (entry.presence() == Job.Presence.PRESENT) {
			cells.put(new Target.Presence(kind).name(), kind.many() ? Integer.toString(facts.size()) : "fitted");
		}
	}
}
