package org.setwright.command.answer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Option;

/** Prints a report in the form the user asked for; a mixin of every word. */
public final class Delivery {
	private final Surroundings surroundings;

	@Option(names = "--as", paramLabel = "FORM", defaultValue = "text",
			description = "Print as ${COMPLETION-CANDIDATES}; text when left out. OUTPUT.md describes json and csv; svg is a picture of why.")
	private Form form;

	/** @param surroundings where to print */
	public Delivery(Surroundings surroundings) {
		this.surroundings = surroundings;
	}

	/** Prints {@code report}. @return its exit code */
	public int deliver(Report report) {
		String answer = switch (form) {
			case TEXT -> text(report);
			case JSON -> json(report);
			case CSV -> csv(report);
			case SVG -> report.svg();
		};
		print(answer);
		return report.exitCode();
	}

	/** Prints {@code answer} as it is, whatever form was asked for. */
	public void print(String answer) {
		try {
			surroundings.out().write(answer.getBytes(StandardCharsets.UTF_8));
			surroundings.out().flush();
		} catch (IOException e) {
			String reason = String.valueOf(e.getMessage());
			if (!reason.contains("Broken pipe")) { // whoever reads has read enough
				throw Refusal.couldNotRun("The answer could not be written out (" + reason + ").");
			}
		}
	}

	private String text(Report report) {
		Page page = new Page(surroundings);
		report.text(page);
		return page.toString();
	}

	private static String json(Report report) {
		StringWriter written = new StringWriter();
		try (JsonGenerator json = new JsonFactory().createGenerator(written).useDefaultPrettyPrinter()) {
			json.writeStartObject();
			json.writeStringField("setwright", report.word());
			json.writeNumberField("shape", Report.SHAPE);
			report.json(json);
			json.writeEndObject();
		} catch (IOException impossible) {
			throw new UncheckedIOException(impossible);
		}
		return written.append('\n').toString();
	}

	private static String csv(Report report) {
		StringWriter written = new StringWriter();
		try (CSVPrinter printer = new CSVPrinter(written, CSVFormat.RFC4180)) {
			printer.printRecords(report.csv());
		} catch (IOException impossible) {
			throw new UncheckedIOException(impossible);
		}
		return written.toString();
	}
}
