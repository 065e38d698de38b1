package org.setwright.book.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setwright.book.Nearest;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlReader;
import org.setwright.book.yaml.YamlText;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Catalogue;

/**
 * What the columns of a shop's own file mean, by their headings. A heading it does not name has to say it by itself.
 *
 * @param columns by heading, in small letters
 */
public record Mapping(Map<String, Column> columns) {
	/** Every heading says by itself what it means. */
	public static final Mapping NONE = new Mapping(Map.of());

	public Mapping {
		columns = Map.copyOf(columns);
	}

	/**
	 * What one column means.
	 *
	 * @param to the name of what its cells say, for example "outdoor unit maker", or "ignore"
	 * @param values what to read for what is written, by that in small letters
	 * @param unit added to a number that stands alone; empty for none
	 */
	public record Column(String to, Map<String, String> values, String unit) {
		public Column {
			values = Map.copyOf(values);
		}

		/** Says no more than what the column means. */
		public Column(String to) {
			this(to, Map.of(), "");
		}

		/** @return the same with {@code meaning} read for what is written; an empty one takes that back */
		public Column reading(String written, String meaning) {
			Map<String, String> changed = new LinkedHashMap<>(values);
			String key = written.strip().toLowerCase(Locale.ROOT);
			if (meaning.isBlank() || meaning.strip().equalsIgnoreCase(key)) {
				changed.remove(key);
			} else {
				changed.put(key, meaning.strip());
			}
			return new Column(to, changed, unit);
		}

		/** @return what a cell means */
		public String read(String cell) {
			String text = cell.strip();
			String value = values.getOrDefault(text.toLowerCase(Locale.ROOT), text);
			return !unit.isEmpty() && value.matches("[+-]?[\\d,]*\\.?\\d+") ? value + " " + unit : value;
		}
	}

	/** A mapping as read. @param problems empty when it is sound */
	public record Read(Mapping mapping, List<Problem> problems) {
	}

	/** @return the column headed {@code heading}; one that says by itself what it means when nothing is said of it */
	public Column column(String heading) {
		return columns.getOrDefault(key(heading), new Column(heading.strip()));
	}

	/** @return the same saying {@code column} of the column headed {@code heading} */
	public Mapping with(String heading, Column column) {
		Map<String, Column> changed = new LinkedHashMap<>(columns);
		changed.put(key(heading), column);
		return new Mapping(changed);
	}

	private static String key(String heading) {
		return heading.strip().toLowerCase(Locale.ROOT);
	}

	/**
	 * @param file for positions
	 * @param text of a mapping: under "columns", each heading with the name of what it means, or with "to", "values" and "unit"
	 */
	public static Read read(String file, String text, Catalogue catalogue) {
		SourceText source = SourceText.of(text);
		YamlText yaml = YamlReader.read(source);
		List<Problem> problems = new ArrayList<>();
		yaml.faults().forEach(f -> problems.add(Problem.error(at(file, source, f.offset()), f.what(), f.remedy())));
		Map<String, Column> columns = new LinkedHashMap<>();
		Optional<YamlNode> listed = yaml.root().filter(YamlNode.Mapping.class::isInstance).map(YamlNode.Mapping.class::cast)
				.flatMap(m -> m.entries().stream().filter(e -> e.key().text().equals("columns")).map(Entry::value).findFirst());
		if (listed.orElse(null) instanceof YamlNode.Mapping all) {
			for (Entry entry : all.entries()) {
				column(entry.value()).filter(c -> known(c, catalogue)).ifPresentOrElse(c -> columns.put(key(entry.key().text()), c),
						() -> problems.add(unknown(at(file, source, entry.value().start()), entry, catalogue)));
			}
		} else if (problems.isEmpty()) {
			problems.add(Problem.error(Position.whole(file), "The mapping names no columns.",
					"Write \"columns:\", and below it, indented, each heading with a colon and what it means."));
		}
		return new Read(new Mapping(columns), problems);
	}

	private static Position at(String file, SourceText source, int offset) {
		return new Position(file, source.line(offset), source.column(offset));
	}

	private static boolean known(Column column, Catalogue catalogue) {
		return Target.of(column.to(), catalogue).isPresent();
	}

	private static Problem unknown(Position at, Entry entry, Catalogue catalogue) {
		String to = column(entry.value()).map(Column::to).orElse("");
		String near = Nearest.to(to, Target.names(catalogue)).map(n -> "Write \"" + n + "\", or \"ignore\".")
				.orElse("Write a kind of fact and one of its answers, for example \"outdoor unit maker\"; or job, notes, \"expect\" and a setting, or ignore.");
		return Problem.error(at, "What the column \"" + entry.key().text() + "\" means is not understood.", near);
	}

	private static Optional<Column> column(YamlNode written) {
		if (written instanceof Scalar to && !to.saysNothing()) {
			return Optional.of(new Column(to.text()));
		} else if (written instanceof YamlNode.Mapping mapping) {
			Map<String, String> values = new LinkedHashMap<>();
			Map<String, String> words = new LinkedHashMap<>();
			for (Entry entry : mapping.entries()) {
				if (entry.value() instanceof Scalar word) {
					words.put(entry.key().text(), word.text().strip());
				} else if (entry.key().text().equals("values") && entry.value() instanceof YamlNode.Mapping all) {
					all.entries().stream().filter(e -> e.value() instanceof Scalar)
							.forEach(e -> values.put(e.key().text().strip().toLowerCase(Locale.ROOT), ((Scalar) e.value()).text().strip()));
				}
			}
			return Optional.ofNullable(words.get("to")).map(to -> new Column(to, values, words.getOrDefault("unit", "")));
		}
		return Optional.empty();
	}

	/** @return a mapping to begin with: what each heading means where it says so or nearly so, else "ignore" */
	public static Mapping guess(List<String> headings, Catalogue catalogue) {
		Mapping guessed = NONE;
		for (String heading : headings) {
			String to = Target.of(heading, catalogue).map(Target::name).or(() -> Nearest.to(heading, Target.names(catalogue))).orElse(Target.IGNORE);
			guessed = guessed.with(heading, new Column(to));
		}
		return guessed;
	}

	/** @return the text of a mapping to begin with, see {@link #guess} */
	public static String draft(List<String> headings, Catalogue catalogue) {
		return guess(headings, catalogue).text(headings);
	}

	/** @return what this says of the columns headed {@code headings}, as text that {@link #read} reads */
	public String text(List<String> headings) {
		StringBuilder text = new StringBuilder("# What each column means. \"ignore\" leaves one out; the words are listed by: setwright words\n"
				+ "# A column may also say more:  Area: { to: building floor area, unit: ft2 }\n"
				+ "#                              Type: { to: outdoor unit kind, values: { HP: air-source heat pump } }\ncolumns:\n");
		headings.forEach(h -> text.append("  ").append(YamlWords.of(h.strip(), false)).append(": ").append(text(column(h))).append('\n'));
		return text.toString();
	}

	private static String text(Column column) {
		if (column.values().isEmpty() && column.unit().isEmpty()) {
			return YamlWords.of(column.to(), false);
		}
		String values = new TreeMap<>(column.values()).entrySet().stream().map(e -> YamlWords.of(e.getKey(), true) + ": " + YamlWords.of(e.getValue(), true))
				.collect(Collectors.joining(", ", ", values: { ", " }"));
		return "{ to: " + YamlWords.of(column.to(), true) + (column.unit().isEmpty() ? "" : ", unit: " + YamlWords.of(column.unit(), true))
				+ (column.values().isEmpty() ? "" : values) + " }";
	}
}
