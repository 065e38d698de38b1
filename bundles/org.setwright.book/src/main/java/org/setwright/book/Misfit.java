package org.setwright.book;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.trade.catalogue.Dimension;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/**
 * Why a written value is not one that a field or setting may take.
 *
 * @param what what is wrong, one sentence
 * @param remedy what to write, one sentence
 */
public record Misfit(String what, String remedy) {
	private static final Pattern NUMBER = Pattern.compile("[+-]?[\\d,]+(?:\\.\\d+)?");
	private static final int SHOWN = 40;
	private static final int LONGEST = JobKeys.LONGEST_VALUE;

	/**
	 * @param label what people call the field or setting
	 * @param written the value, which {@code domain} does not read
	 */
	public static Misfit of(String label, String written, Domain domain) {
		if (written.length() > LONGEST) {
			return new Misfit("Too much is written for " + label + ".", write(domain));
		} else if (domain instanceof Domain.Choices choices) {
			return choice(label, written, choices);
		} else if (domain instanceof Domain.Whole whole) {
			return whole(label, written, whole);
		} else if (domain instanceof Domain.Measure measure) {
			return measure(label, written, measure);
		} else if (domain instanceof Domain.Words && written.strip().indexOf('\n') >= 0) {
			return new Misfit("More than one line is written for " + label + ".", write(domain));
		} else if (domain instanceof Domain.Words && !written.isBlank()) {
			return new Misfit("Too much is written for " + label + ".", write(domain));
		}
		return new Misfit(quoted(written) + " is no value of " + label + ".", write(domain));
	}

	/** @return {@code text} between quotes as it may stand in a sentence: on one line, shortened, nothing invisible */
	public static String quoted(String text) {
		String plain = text.strip().replaceAll("\\p{Cntrl}+", " ");
		return "\"" + (plain.length() > SHOWN ? plain.substring(0, SHOWN) + "..." : plain) + "\"";
	}

	/** @return the labels that may have been meant by {@code written}, the likeliest first; empty when {@code domain} has no choices */
	public static List<String> near(String written, Domain domain) {
		return domain instanceof Domain.Choices choices
				? Nearest.several(written, choices.options().stream().map(Domain.Choices.Option::label).toList(), 3) : List.of();
	}

	private static String write(Domain domain) {
		return "Write " + domain.allowed() + ".";
	}

	private static Misfit choice(String label, String written, Domain.Choices choices) {
		List<String> labels = choices.options().stream().map(Domain.Choices.Option::label).toList();
		String remedy = Nearest.to(written, labels).map(near -> "Write \"" + near + "\".").orElse(write(choices));
		return new Misfit(quoted(written) + " is no value of " + label + ".", remedy);
	}

	private static Misfit whole(String label, String written, Domain.Whole whole) {
		boolean number = written.strip().matches("[+-]?\\d+");
		return new Misfit(quoted(written) + (number ? " is out of bounds for " + label + "." : " is no whole number."),
				write(whole));
	}

	private static Misfit measure(String label, String written, Domain.Measure measure) {
		String text = written.strip();
		Matcher number = NUMBER.matcher(text);
		if (!number.lookingAt()) {
			return new Misfit(quoted(text) + " does not begin with a number.", write(measure));
		} else if (Quantity.parse(text, measure.unit().dimension()).isPresent()) {
			return new Misfit(quoted(text) + " is out of bounds for " + label + ".", write(measure));
		}
		String unit = text.substring(number.end()).strip();
		if (unit.isEmpty() && measure.unit() != Unit.NONE) {
			return new Misfit("The unit of " + label + " is missing after " + text + ".", write(measure));
		}
		Optional<Dimension> other = Arrays.stream(Dimension.values()).filter(d -> Unit.written(unit, d).isPresent()).findFirst();
		String why = unit.isEmpty() || other.filter(measure.unit().dimension()::equals).isPresent()
				? quoted(text) + " is no number with a unit."
				: other.filter(d -> d != Dimension.NONE).map(d -> "The unit " + quoted(unit) + " measures " + d.label() + ", not what " + label + " needs.")
						.orElse("There is no unit " + quoted(unit) + " for " + label + ".");
		return new Misfit(why, write(measure));
	}
}
