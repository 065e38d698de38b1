package org.setwright.trade.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which values a field or a setting may take. Reads and checks values written by people. */
public sealed interface Domain {

	/**
	 * Reads a value as people write it: a choice by label or by its word in rules, a quantity with its unit.
	 *
	 * @param text not null
	 * @return the value, or empty when {@code text} is not one of this domain
	 */
	Optional<Value> read(String text);

	/** @return what is allowed, as the end of a sentence "write ...": for example "a whole number from 0 to 4" */
	String allowed();

	/** @return whether {@code other}, of the same sort, allows every value of this one */
	default boolean within(Domain other) {
		return true;
	}

	/** @return the values to offer, when they can be listed; else empty */
	default List<Value> listed() {
		return List.of();
	}

	/** One of a closed list. */
	record Choices(List<Option> options) implements Domain {
		public Choices {
			options = List.copyOf(options);
		}

		/** @param enumType an enum implementing {@link Choice} @return the domain of its constants, in their order */
		public static Choices of(Class<?> enumType) {
			return new Choices(Arrays.stream(enumType.getEnumConstants()).map(Choice.class::cast)
					.map(c -> new Option(c.name(), c.label(), c.meaning())).toList());
		}

		/** One answer of the list. @param id its word in rules @param label its words for people */
		public record Option(String id, String label, String meaning) {
		}

		@Override
		public Optional<Value> read(String text) {
			String wanted = text.strip();
			return options.stream().filter(o -> o.label().equalsIgnoreCase(wanted) || o.id().equalsIgnoreCase(wanted))
					.findFirst().map(Value.OneOf::new);
		}

		@Override
		public String allowed() {
			return "one of: " + options.stream().map(Option::label).collect(Collectors.joining(", "));
		}

		@Override
		public List<Value> listed() {
			return options.stream().<Value>map(Value.OneOf::new).toList();
		}
	}

	/** A whole number from {@code least} to {@code most}, both allowed. */
	record Whole(int least, int most) implements Domain {
		@Override
		public boolean within(Domain other) {
			return other instanceof Whole whole && least >= whole.least && most <= whole.most;
		}

		@Override
		public Optional<Value> read(String text) {
			try {
				int number = Integer.parseInt(text.strip());
				return number >= least && number <= most ? Optional.of(new Value.Count(number)) : Optional.empty();
			} catch (NumberFormatException notWhole) {
				return Optional.empty();
			}
		}

		@Override
		public String allowed() {
			return "a whole number from " + least + " to " + most;
		}

		@Override
		public List<Value> listed() {
			return most - least > 12 ? List.of()
					: java.util.stream.IntStream.rangeClosed(least, most).<Value>mapToObj(Value.Count::new).toList();
		}
	}

	/** A quantity in any unit of one dimension, from {@code least} to {@code most} of {@code unit}. */
	record Measure(Unit unit, double least, double most) implements Domain {
		@Override
		public boolean within(Domain other) {
			return other instanceof Measure measure && unit.toBase(least) >= measure.unit.toBase(measure.least)
					&& unit.toBase(most) <= measure.unit.toBase(measure.most);
		}

		@Override
		public Optional<Value> read(String text) {
			return Quantity.parse(text, unit.dimension())
					.filter(q -> q.base() >= new Quantity(least, unit).base() && q.base() <= new Quantity(most, unit).base())
					.map(Value.Amount::new);
		}

		@Override
		public String allowed() {
			String units = Unit.measuring(unit.dimension()).stream().map(Unit::symbol).collect(Collectors.joining(" or "));
			return "a " + (unit == Unit.NONE ? "number" : "number with its unit (" + units + ")") + " from "
					+ new Quantity(least, unit) + " to " + new Quantity(most, unit);
		}
	}

	/** Yes or no. */
	record YesNo() implements Domain {
		@Override
		public Optional<Value> read(String text) {
			return switch (text.strip().toLowerCase(java.util.Locale.ROOT)) {
				case "yes", "true" -> Optional.of(new Value.Flag(true));
				case "no", "false" -> Optional.of(new Value.Flag(false));
				default -> Optional.empty();
			};
		}

		@Override
		public String allowed() {
			return "yes or no";
		}

		@Override
		public List<Value> listed() {
			return List.of(new Value.Flag(true), new Value.Flag(false));
		}
	}

	/** Words, on one line, at most 200 characters. */
	record Words() implements Domain {
		/** More characters are not read. */
		public static final int LONGEST = 200;

		@Override
		public Optional<Value> read(String text) {
			String words = text.strip();
			return words.isEmpty() || words.length() > LONGEST || words.indexOf('\n') >= 0 ? Optional.empty()
					: Optional.of(new Value.Words(words));
		}

		@Override
		public String allowed() {
			return "some words on one line, at most " + LONGEST + " characters";
		}
	}
}
