package org.setwright.command.words;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.StartUpPhase;

/** Entries of the catalogue. @param brief whether the text gives one line to each */
record WordsReport(List<Entry> entries, boolean brief) implements Report {
	private static final int MOST_IN_FULL = 12;
	private static final int LABEL = 34;

	/** @return the entries called {@code wanted}, else those that mention it; a fact brings its answers */
	static WordsReport about(String wanted, Catalogue catalogue) {
		String text = wanted.toLowerCase(Locale.ROOT);
		List<Entry> all = Stream.of(catalogue.kinds().stream().flatMap(Entry::all), catalogue.settings().stream().map(Entry::of),
				Arrays.stream(StartUpPhase.values()).map(Entry::of)).flatMap(s -> s).toList();
		List<Entry> called = all.stream().filter(e -> e.called(text)).toList();
		Predicate<Entry> wantedOnes = called.isEmpty() ? e -> e.mentions(text)
				: e -> called.contains(e) || called.stream().anyMatch(c -> c.sort().equals("fact") && c.label().equals(e.of()));
		List<Entry> found = all.stream().filter(wantedOnes).toList();
		return new WordsReport(found, called.isEmpty() && found.size() > MOST_IN_FULL);
	}

	@Override
	public String word() {
		return "words";
	}

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		String heading = "";
		for (Entry entry : entries) {
			String over = entry.sort().equals("setting") ? "settings: " + entry.of() : entry.sort().equals("fact") ? entry.label() : entry.of();
			if (!heading.equals(over)) {
				heading = over;
				page.blank().line(0, Style.STRONG, over);
			}
			if (brief) {
				page.row(2, new Cell(Math.min(LABEL, page.width() / 2), Style.PLAIN, entry.label()), Cell.rest(Style.QUIET, entry.word()));
			} else {
				full(page, entry);
			}
		}
		if (brief) {
			page.blank().line(0, Style.PLAIN, "Left: as job files and people write it; right: as rules write it."
					+ " Add a name to read what it means and what it may be.");
		}
	}

	private static void full(Page page, Entry entry) {
		page.row(2, new Cell(LABEL, Style.STRONG, entry.label()), Cell.rest(Style.PLAIN, "in rules: " + entry.word()));
		page.line(4, Style.PLAIN, entry.meaning());
		if (entry.options().isEmpty()) {
			page.line(4, Style.QUIET, entry.allowed());
		}
		for (Domain.Choices.Option option : entry.options()) {
			page.row(4, new Cell(1, Style.QUIET, "-"), Cell.rest(Style.QUIET, option.label() + " (" + option.id() + ")" + (option.meaning().isEmpty() ? "" : ": " + option.meaning())));
		}
		if (!entry.note().isEmpty()) {
			page.line(4, Style.QUIET, entry.note());
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		json.writeArrayFieldStart("entries");
		for (Entry entry : entries) {
			json.writeStartObject();
			json.writeStringField("sort", entry.sort());
			json.writeStringField("of", entry.of());
			json.writeStringField("label", entry.label());
			json.writeStringField("word", entry.word());
			json.writeStringField("meaning", entry.meaning());
			json.writeStringField("allowed", entry.allowed());
			json.writeStringField("note", entry.note());
			options(json, entry.options());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	private static void options(JsonGenerator json, List<Domain.Choices.Option> options) throws IOException {
		json.writeArrayFieldStart("options");
		for (Domain.Choices.Option option : options) {
			json.writeStartObject();
			json.writeStringField("label", option.label());
			json.writeStringField("word", option.id());
			json.writeStringField("meaning", option.meaning());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("sort", "of", "label", "word", "meaning", "allowed", "note", "options"));
		entries.forEach(e -> rows.add(List.of(e.sort(), e.of(), e.label(), e.word(), e.meaning(), e.allowed(), e.note(),
				e.options().stream().map(Domain.Choices.Option::label).collect(Collectors.joining("; ")))));
		return rows;
	}
}
