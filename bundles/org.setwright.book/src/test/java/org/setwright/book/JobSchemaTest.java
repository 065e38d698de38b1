package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

class JobSchemaTest {
	private static final Path SHIPPED = Path.of("src/main/resources/org/setwright/book/job.schema.json");

	private static final JsonSchema SAMPLE = schema(Sample.CATALOGUE);
	private static final JsonSchema TRADE = schema(Trade.catalogue());
	private static final JsonSchema STARTER = schema(BookReader.catalogue(Path.of("../../rules/starter"), Trade.catalogue()));

	@Test
	void theShippedSchemaIsThatOfTheCatalogue() throws IOException {
		String schema = JobSchema.of(Trade.catalogue());
		if ("yes".equals(System.getProperty("golden.accept"))) {
			Files.writeString(SHIPPED, schema);
		}
		assertTrue(schema.equals(Files.readString(SHIPPED)),
				"the catalogue has changed since " + SHIPPED + " was made; -Dgolden.accept=yes makes it anew");
	}

	@Test
	void acceptsWhatTheWriterWrites() throws JobNotWritten {
		for (Catalogue catalogue : List.of(Sample.CATALOGUE, Trade.catalogue())) {
			RandomJobs jobs = new RandomJobs(11, catalogue);
			JsonSchema schema = catalogue == Sample.CATALOGUE ? SAMPLE : TRADE;
			for (int i = 0; i < 200; i++) {
				String text = new JobWriter(catalogue).write(jobs.job());
				assertEquals("[]", schema.validate(text, InputFormat.YAML).toString(), text);
			}
		}
	}

	@ParameterizedTest
	@MethodSource("starterJobs")
	void acceptsTheJobsOfTheStarterBook(Path job) throws IOException {
		assertEquals("[]", STARTER.validate(Files.readString(job), InputFormat.YAML).toString());
	}

	@Test
	void knowsSettingsOfTheShopsOwnOnlyInItsOwnBook() throws IOException {
		String job = "job: A\nexpect:\n  water panel reminder: once a season\n";
		assertEquals("[]", STARTER.validate(job, InputFormat.YAML).toString());
		assertFalse(TRADE.validate(job, InputFormat.YAML).isEmpty());
	}

	static List<Path> starterJobs() throws IOException {
		try (var files = Files.list(Path.of("../../rules/starter/jobs"))) {
			return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "lamp: none", "job: A\nlamb: none", "job: A\nlamp: yes please", "job: A\nhouse: none", "job: A\npump: { stages: 9 }",
			"job: A\npump: { stages: two }", "job: A\npump: { running heat: 48000 }", "job: A\npump: { running heat: 4 ft }", "job: A\npump: [ ]",
			"job: A\nwires: { colour: red }", "job: A\nwires: [mauve]", "job: A\nhouse: { half area: 7 ft2 }", "job: A\ntotals: { wire count: 1 }",
			"job: A\nnot fitted: [house]", "job: A\nexpect: { pump speed: 9 }", "job: A\nexpect: { speed: 1 }", "job: [A]",
			"job: A\nexpect: { pump speed: { is: 2 } }", "job: A\nexpect: { cautions: [stopp] }", "job: A\nexpect: { no cautions: { stop: a, note: b } }",
			"job: A\naccepted: { what: a }", "job: A\naccepted: [{ what: a, was: b, now: c, date: May 1, by: d, because: e }]" })
	void refusesWhatTheReaderRefuses(String text) {
		assertFalse(JobReader.read("jobs/a.yaml", text, Sample.CATALOGUE).sound());
		assertFalse(SAMPLE.validate(text, InputFormat.YAML).isEmpty());
	}

	private static JsonSchema schema(Catalogue catalogue) {
		return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(JobSchema.of(catalogue));
	}
}
