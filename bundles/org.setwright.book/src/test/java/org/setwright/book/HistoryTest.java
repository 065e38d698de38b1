package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.history.HistoryExport;
import org.setwright.book.history.HistoryImport;
import org.setwright.book.history.HistoryResult;
import org.setwright.book.history.Mapping;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/** Job histories: CSV to job files and back. */
class HistoryTest {
	private static final HistoryResult.Watcher PATIENT = (jobs, all) -> true;
	@TempDir
	Path folder;

	@ParameterizedTest
	@ValueSource(strings = { "sample", "trade" })
	void whatIsExportedIsImportedAsTheSameJobs(String catalogue) throws Exception {
		Catalogue of = catalogue.equals("trade") ? Trade.catalogue() : Sample.CATALOGUE;
		RandomJobs jobs = new RandomJobs(31, of);
		Path before = Files.createDirectories(folder.resolve("before"));
		for (int i = 0; i < 60; i++) {
			JobCase job = jobs.job();
			JobCase named = new JobCase("jobs/x.yaml", "Job " + i, job.notes().strip(), job.job(), job.expected(), job.items(), List.of(), job.positions());
			Files.writeString(before.resolve("job-" + i + ".yaml"), new JobWriter(of).write(named));
		}
		assertEquals(60, new HistoryExport(of).run(before, folder.resolve("all.csv"), PATIENT).jobs());
		HistoryResult result = read(of, Mapping.NONE, Files.readString(folder.resolve("all.csv")), PATIENT);
		assertEquals(List.of(), result.problems());
		assertEquals(60, result.jobs());
		TreeMap<String, String> wanted = texts(before, of);
		TreeMap<String, String> came = texts(folder.resolve("jobs"), of);
		wanted.forEach((file, text) -> assertEquals(text, came.get(file), file));
		assertEquals(wanted.size(), came.size());
	}

	/** What each file says, in one style: expectations and cautions in the order of the first. */
	private static TreeMap<String, String> texts(Path jobs, Catalogue catalogue) throws Exception {
		TreeMap<String, String> texts = new TreeMap<>();
		for (Path file : list(jobs)) {
			JobCase job = JobReader.read("jobs/x.yaml", Files.readString(file), catalogue).job();
			texts.put(file.getFileName().toString(), job.name() + "\n" + job.notes() + "\n" + new TreeMap<>(job.job().entries().entrySet().stream()
					.filter(e -> e.getValue().presence() != org.setwright.trade.catalogue.Job.Presence.UNKNOWN).collect(Collectors.toMap(e -> e.getKey().key(), e -> e.getValue().toString())))
					+ "\n" + new TreeMap<>(job.expected().entrySet().stream().collect(Collectors.toMap(e -> e.getKey().id(), e -> e.getValue().text())))
					+ "\n" + job.items().stream().map(i -> i.list() + i.text()).sorted().toList());
		}
		return texts;
	}

	@Test
	void aShopsOwnColumnsAreMapped() throws Exception {
		String mapping = """
				columns:
				  Customer: job
				  Make: pump maker
				  Type: { to: pump kind, values: { WL: water-lifting pump, AD: air-driven pump } }
				  Area: { to: house floor area, unit: ft2 }
				  Wires: wires
				  Cable: wire 2 colour
				  Speed set: expect pump speed
				  Invoice: ignore
				""";
		Mapping.Read read = Mapping.read("map.yaml", mapping, Sample.CATALOGUE);
		assertEquals(List.of(), read.problems());
		HistoryResult result = read(Sample.CATALOGUE, read.mapping(), "\uFEFFCustomer,Make,Type,Area,Wires,Cable,Speed set,Invoice\r\n"
				+ "\"Larch Lane 14, upstairs\",Norrvik,wl,\"1,500\",3,blue,2 within 1,77\r\nMill Road,,unknown,140 m2,none,,not set,78\r\n", PATIENT);
		assertEquals(List.of(), result.problems());
		assertEquals("job: Larch Lane 14, upstairs\npump: { kind: water-lifting pump, maker: Norrvik }\nwires:\n  - unknown\n  - { colour: blue }\n"
				+ "  - unknown\nhouse: { floor area: 1500 ft2 }\nexpect:\n  pump speed: 2 within 1\n", Files.readString(folder.resolve("jobs/larch-lane-14-upstairs.yaml")));
		assertEquals("job: Mill Road\nhouse: { floor area: 140 m2 }\nnot fitted: [wire]\nexpect:\n  pump speed: not set\n", Files.readString(folder.resolve("jobs/mill-road.yaml")));
	}

	@ParameterizedTest(name = "{0}")
	@CsvSource(delimiter = '|', textBlock = """
			job,pump stages;A,9           | h.csv:2: Column "pump stages": "9" is out of bounds for stages. Write a whole number from 1 to 4.
			job,house floor area;A,15     | h.csv:2: Column "house floor area": The unit of floor area is missing after 15. Write a number with its unit (m2 or ft2) from 100 ft2 to 20000 ft2.
			job,pump makre;A,x            | h.csv:1: Nobody says what the column "pump makre" means; perhaps "pump maker" is meant. Say it in the mapping, or write "ignore" there.
			job,pump maker,Pump Maker;A,x,y | h.csv:1: Two columns both say "pump maker". Map one of them to "ignore".
			pump maker;x                  | h.csv:2: The row has no name for its job. Fill the column "job", or map a column to it.
			job;A;a                       | h.csv:3: There is already a job called "a". Give one of the two another name.
			job,lamp;Taken,none           | h.csv:2: There is already a job called "Taken". Give one of the two another name.
			job,lamp,lamp colour;A,none,red | h.csv:2: Column "lamp": It says there is none, and other columns describe it. Correct the one or the others.
			job,house;A,none              | h.csv:2: Column "house": Every job has a house. Leave the cell empty.
			job,expect pump speed;A,fast  | h.csv:2: Column "expect pump speed": "fast" is no whole number. Write a whole number from 0 to 3.
			job,expect cautions;A,stopp   | h.csv:2: Column "expect cautions": There is no kind of caution "stopp". Write "stop".
			job,expect start-up;A,coolng: a | h.csv:2: Column "expect start-up": There is no part of a start-up "coolng". Write "cooling".
			job,lamp;A                    | h.csv:2: The row has 1 cells, and there are 2 headings. Add or remove commas.
			""")
	void aFaultNamesItsRowAndColumnAndNothingIsWritten(String csv, String fault) throws IOException {
		HistoryResult result = read(Sample.CATALOGUE, Mapping.NONE, csv.replace(';', '\n') + "\n", PATIENT);
		assertEquals(fault, result.problems().get(0).toString());
		assertEquals(1, result.problems().size());
		assertEquals(List.of("before"), list(folder).stream().map(p -> p.getFileName().toString()).toList(), "nothing is left behind");
	}

	@Test
	void everyRowIsReadBeforeTheFaultsAreTold() throws IOException {
		StringBuilder csv = new StringBuilder("job,pump stages\n");
		for (int i = 0; i < 130; i++) {
			csv.append("J").append(i).append(',').append(i % 2 == 0 ? 9 : 1).append('\n');
		}
		HistoryResult result = read(Sample.CATALOGUE, Mapping.NONE, csv.toString(), PATIENT);
		assertEquals(65, result.problems().size());
		assertEquals("h.csv:4", result.problems().get(1).at().toString());
		assertEquals(130, result.jobs());
	}

	@Test
	void whoeverWatchesMayEndItAndNothingIsWritten() throws IOException {
		HistoryResult result = read(Sample.CATALOGUE, Mapping.NONE, "job\nA\nB\nC\n", (jobs, all) -> jobs < 2);
		assertTrue(result.cancelled());
		assertEquals(2, result.jobs());
		assertFalse(Files.exists(folder.resolve("jobs")));
	}

	@Test
	void filesThatAreThereAreNeverReplaced() throws IOException {
		Path jobs = Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(jobs.resolve("a.yaml"), "job: Another\n");
		read(Sample.CATALOGUE, Mapping.NONE, "job\nA\nA.\n", PATIENT);
		assertEquals("job: Another\n", Files.readString(jobs.resolve("a.yaml")));
		assertEquals(List.of("job: A\n", "job: A.\n"), List.of(Files.readString(jobs.resolve("a-2.yaml")), Files.readString(jobs.resolve("a-3.yaml"))));
	}

	@Test
	void whatIsNoCsvIsSaid() throws IOException {
		assertTrue(read(Sample.CATALOGUE, Mapping.NONE, "job,\nA,B\n", PATIENT).problems().get(0).what().startsWith("The file is no CSV"));
		assertTrue(read(Sample.CATALOGUE, Mapping.NONE, "job\n\"A\n", PATIENT).problems().get(0).what().startsWith("The file is no CSV"));
	}

	@Test
	void aDraftOfAMappingReadsBackAndGuessesWhatIsNear() {
		String draft = Mapping.draft(List.of("Job", "pump  makre", "Invoice: no", "lamp"), Sample.CATALOGUE);
		assertTrue(draft.endsWith("columns:\n  Job: job\n  pump  makre: pump maker\n  'Invoice: no': ignore\n  lamp: lamp\n"), draft);
		assertEquals(List.of(), Mapping.read("m.yaml", draft, Sample.CATALOGUE).problems());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			columns: { A: pump makre }     | m.yaml:1:15: What the column "A" means is not understood. Write "pump maker", or "ignore".
			columns: { A: { unit: ft2 } }  | m.yaml:1:15: What the column "A" means is not understood. Write a kind
			column: { A: job }             | m.yaml: The mapping names no columns.
			columns: [                     | m.yaml:1:10:
			""")
	void aFaultInAMappingNamesItsPlace(String mapping, String fault) {
		List<Problem> problems = Mapping.read("m.yaml", mapping, Sample.CATALOGUE).problems();
		assertTrue(problems.get(0).toString().startsWith(fault), problems.toString());
	}

	@Test
	void aJobThatCannotBeReadStopsTheExport() throws IOException {
		Path jobs = Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(jobs.resolve("a.yaml"), "job: A\nlamb: none\n");
		HistoryResult result = new HistoryExport(Sample.CATALOGUE).run(jobs, folder.resolve("all.csv"), PATIENT);
		assertEquals("jobs/a.yaml:2:1: There is no \"lamb\" in a job file. Write \"lamp\".", result.problems().get(0).toString());
		assertFalse(Files.exists(folder.resolve("all.csv")));
		assertThrows(IOException.class, () -> new HistoryExport(Sample.CATALOGUE).run(folder.resolve("none"), folder.resolve("all.csv"), PATIENT));
	}

	private HistoryResult read(Catalogue catalogue, Mapping mapping, String csv, HistoryResult.Watcher watcher) throws IOException {
		Files.createDirectories(folder.resolve("before"));
		return new HistoryImport("h.csv", catalogue, mapping).run(new StringReader(csv), folder.resolve("jobs"), Set.of("taken"), watcher);
	}

	private static List<Path> list(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.sorted().toList();
		}
	}
}
