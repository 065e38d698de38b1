package org.setwright.book;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlReader;
import org.setwright.book.yaml.YamlText;

/** What {@code book.yaml} says. @param name empty when it is missing @param description may be empty @param floors what it demands of its jobs */
record BookDetails(String name, String description, Floors floors, SignOff signOff, List<Problem> problems) {
	static final String FILE = "book.yaml";
	private static final String BOOK = "book";
	private static final String DESCRIPTION = "description";
	private static final String FORMAT = "format";
	private static final String FORMAT_READ = "1";
	private static final String AT_LEAST = "at least";
	private static final String SIGN_OFF = "sign-off";
	private static final List<String> KEYS = List.of(BOOK, DESCRIPTION, FORMAT, AT_LEAST, SIGN_OFF);
	private static final String BEGIN = "Begin with a line \"book:\" and the name of the book.";

	BookDetails {
		problems = List.copyOf(problems);
	}

	static BookDetails read(String text) {
		SourceText source = SourceText.of(text);
		ProblemList problems = new ProblemList(FILE, source);
		YamlText yaml = YamlReader.read(source);
		yaml.faults().forEach(f -> problems.error(f.offset(), f.what(), f.remedy()));
		if (yaml.root().isEmpty() && yaml.faults().isEmpty()) {
			problems.errorInFile("The file says nothing.", BEGIN);
		} else if (yaml.root().isPresent() && yaml.root().get() instanceof Mapping mapping) {
			return read(Keys.of(mapping, problems), problems);
		} else if (yaml.root().isPresent()) {
			problems.error(yaml.root().get().start(), "The file consists of names and values, and this is neither.", BEGIN);
		}
		return new BookDetails("", "", Floors.NONE, SignOff.NOT_DEMANDED, problems.all());
	}

	private static BookDetails read(Keys keys, ProblemList problems) {
		for (YamlNode.Entry entry : keys.entries()) {
			String key = Keys.normal(entry.key().text());
			if (!KEYS.contains(key)) {
				problems.error(entry.key().start(), "There is no " + Misfit.quoted(entry.key().text()) + " in " + FILE + ".",
						Nearest.to(key, KEYS).map(n -> "Write \"" + n + "\".").orElse("Write one of: " + String.join(", ", KEYS) + "."));
			}
		}
		Optional<YamlNode> format = keys.value(FORMAT);
		if (format.isPresent() && !(format.get() instanceof Scalar s && s.text().strip().equals(FORMAT_READ))) {
			problems.error(format.get().start(), "The book is written in a format that this program does not read.",
					"Write \"format: " + FORMAT_READ + "\", or use a newer Setwright when the book was made with one.");
		}
		String name = words(keys, BOOK, problems);
		if (name.isBlank()) {
			problems.errorInFile("The book has no name.", "Add a line \"book:\" with its name.");
		}
		Floors floors = keys.value(AT_LEAST).map(node -> FloorsReader.read(node, problems)).orElse(Floors.NONE);
		return new BookDetails(name, words(keys, DESCRIPTION, problems), floors, signOff(keys, problems), problems.all());
	}

	private static SignOff signOff(Keys keys, ProblemList problems) {
		Optional<YamlNode> written = keys.value(SIGN_OFF);
		if (written.isEmpty()) {
			return SignOff.NOT_DEMANDED;
		}
		String words = written.get() instanceof Scalar s ? Keys.normal(s.text()) : "";
		Optional<SignOff> meant = Arrays.stream(SignOff.values()).filter(s -> s.words().equals(words)).findFirst();
		if (meant.isEmpty()) {
			problems.error(written.get().start(), "This does not say whether the book has to be signed.",
					"Write one of: " + Arrays.stream(SignOff.values()).map(SignOff::words).collect(Collectors.joining(", ")) + ".");
		}
		return meant.orElse(SignOff.DEMANDED);
	}

	private static String words(Keys keys, String key, ProblemList problems) {
		Optional<YamlNode> written = keys.value(key);
		if (written.isPresent() && !(written.get() instanceof Scalar)) {
			problems.error(written.get().start(), "A list or group stands where words are expected.",
					"Write words after \"" + key + ":\", in quotes when they hold colons, brackets or braces.");
		}
		return written.map(node -> node instanceof Scalar s ? s.text().strip() : "").orElse("");
	}
}
