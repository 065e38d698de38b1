package org.setwright.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlReader;
import org.setwright.book.yaml.YamlText;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/** Reads the text of a job file, saved or still being typed. */
public final class JobReader {
	private final Catalogue catalogue;
	private final ProblemList problems;
	private final FieldNames fields;
	private final Map<FactKind, Job.Entry> entries = new LinkedHashMap<>();
	private final Map<JobField, Position> positions = new LinkedHashMap<>();

	private Position nameAt;

	private JobReader(String path, Catalogue catalogue, ProblemList problems) {
		nameAt = Position.whole(path);
		this.catalogue = catalogue;
		this.problems = problems;
		fields = new FieldNames(catalogue, problems);
	}

	/** @return every name that a line of a job file may begin with, in the order they are written */
	public static List<String> names(Catalogue catalogue) {
		return JobKeys.inOrder(catalogue);
	}

	/**
	 * Never throws for what the text says.
	 *
	 * @param path where the file is or will be, below the book folder, for positions
	 * @param text the whole file
	 * @param catalogue which facts and settings there are
	 * @return the job as far as it could be read, and all problems found
	 */
	public static JobText read(String path, String text, Catalogue catalogue) {
		SourceText source = SourceText.of(text);
		ProblemList problems = new ProblemList(path, source);
		YamlText yaml = YamlReader.read(source);
		yaml.faults().forEach(f -> problems.error(f.offset(), f.what(), f.remedy()));
		JobReader reader = new JobReader(path, catalogue, problems);
		JobCase job = reader.job(path, yaml);
		return new JobText(job, reader.nameAt, problems.all());
	}

	private JobCase job(String path, YamlText yaml) {
		if (yaml.root().isEmpty()) {
			if (yaml.faults().isEmpty()) {
				problems.errorInFile("The job file says nothing.", "Begin with a line \"job:\" and the name of the job.");
			}
		} else if (yaml.root().get() instanceof Mapping mapping) {
			return job(path, Keys.of(mapping, problems));
		} else {
			problems.error(yaml.root().get().start(), "A job file consists of names and values, and this is neither.",
					"Begin with a line \"job:\", a blank and the name of the job.");
		}
		return new JobCase(path, fileName(path), "", Job.blank(), Map.of(), Map.of());
	}

	private JobCase job(String path, Keys keys) {
		String name = name(keys).orElse(fileName(path));
		String notes = keys.value(JobKeys.NOTES).flatMap(this::words).filter(s -> !s.saysNothing()).map(s -> s.text().stripTrailing()).orElse("");
		FactReading facts = new FactReading(fields, problems, positions);
		for (YamlNode.Entry entry : keys.entries()) {
			String key = Keys.normal(entry.key().text());
			if (!JobKeys.ALL.contains(key)) {
				fields.kind(entry.key()).ifPresent(kind -> {
					positions.put(JobField.presence(kind), problems.at(entry.key().start()));
					entries.put(kind, facts.entry(kind, entry));
				});
			}
		}
		keys.value(JobKeys.NOT_FITTED).ifPresent(new NotFitted(catalogue, problems, entries, positions)::read);
		Expectations expected = new Expectations(catalogue, problems);
		keys.value(JobKeys.EXPECT).ifPresent(expected::read);
		List<Acceptance> accepted = keys.value(JobKeys.ACCEPTED).map(new Acceptances(problems)::read).orElse(List.of());
		entries.values().removeIf(Job.Entry.UNKNOWN::equals);
		return new JobCase(path, name, notes, new Job(entries), expected.settings(), expected.items(), accepted, positions);
	}

	private Optional<String> name(Keys keys) {
		Optional<YamlNode> written = keys.value(JobKeys.JOB);
		if (written.isEmpty()) {
			problems.errorInFile("The job has no name.", "Add a line \"job:\" with what the shop calls it.");
		}
		Optional<Scalar> name = written.flatMap(this::words);
		if (name.isPresent() && problems.refusedLines(name.get(), "the job's name")) {
			return Optional.empty();
		} else if (name.isPresent() && (name.get().saysNothing() || !JobKeys.fitsOnALine(name.get().text()))) {
			problems.error(name.get().start(), "This is no name for a job.", "Write a name on one line after \"job:\", at most "
					+ JobKeys.LONGEST_NAME + " characters.");
			return Optional.empty();
		}
		name.ifPresent(s -> nameAt = problems.at(s.start()));
		return name.map(s -> s.text().strip());
	}

	private Optional<Scalar> words(YamlNode node) {
		if (node instanceof Scalar scalar) {
			return Optional.of(scalar);
		}
		problems.error(node.start(), "A list or group stands where words are expected.",
				"Write words; put them in quotes when they hold colons, brackets or braces.");
		return Optional.empty();
	}

	private static String fileName(String path) {
		List<String> parts = List.of(path.split("/"));
		String file = parts.isEmpty() ? path : parts.get(parts.size() - 1);
		return file.endsWith(".yaml") ? file.substring(0, file.length() - ".yaml".length()) : file;
	}
}
