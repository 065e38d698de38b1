package org.setwright.book;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;

/** Reads what {@code book.yaml} demands under "at least". */
final class FloorsReader {
	private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:\\.\\d+)?)\\s*%");
	private static final List<String> NAMES = Arrays.stream(Floors.Figure.values()).map(Floors.Figure::words).toList();

	private FloorsReader() {
	}

	static Floors read(YamlNode node, ProblemList problems) {
		if (!(node instanceof Mapping mapping)) {
			problems.error(node.start(), "What is demanded at least is not a group of names and shares.",
					"Write for example \"at least: { rules spoken: 100 % }\".");
			return Floors.NONE;
		}
		Map<Floors.Figure, Double> shares = new EnumMap<>(Floors.Figure.class);
		for (YamlNode.Entry entry : Keys.of(mapping, problems).entries()) {
			String name = Keys.normal(entry.key().text());
			Optional<Floors.Figure> figure = Arrays.stream(Floors.Figure.values()).filter(f -> f.words().equals(name)).findFirst();
			if (figure.isEmpty()) {
				problems.error(entry.key().start(), "Nothing called " + Misfit.quoted(entry.key().text()) + " can be demanded.",
						Nearest.to(name, NAMES).map(n -> "Write \"" + n + "\".").orElse("Write one of: " + String.join(", ", NAMES) + "."));
			} else {
				share(entry.value(), problems).ifPresent(s -> shares.put(figure.get(), s));
			}
		}
		return new Floors(shares);
	}

	private static Optional<Double> share(YamlNode node, ProblemList problems) {
		Matcher percent = PERCENT.matcher(node instanceof Scalar scalar ? scalar.text().strip() : "");
		if (percent.matches() && Double.parseDouble(percent.group(1)) <= 100) {
			return Optional.of(Double.parseDouble(percent.group(1)) / 100);
		}
		problems.error(node.start(), "This is not a share.", "Write a number from 0 to 100 with a percent sign, for example 90 %.");
		return Optional.empty();
	}
}
