package org.setwright.command.opening;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.book.Nearest;
import org.setwright.command.answer.Refusal;

/** Finds the one thing that words name. */
public final class Named {
	private static final int MOST_SHOWN = 6;

	private Named() {
	}

	/**
	 * @param noun what is looked for, for the refusal
	 * @param wanted a name or a part of one, any case
	 * @return the thing one of whose {@code names} is {@code wanted}, else the only one that contains it
	 * @throws Refusal when there is none, or more than one
	 */
	@SafeVarargs
	public static <T> T one(String noun, String wanted, Collection<T> things, Function<T, String>... names) {
		String text = wanted.strip().toLowerCase(Locale.ROOT);
		List<T> found = matching(things, names, name -> name.equals(text));
		if (found.isEmpty()) {
			found = matching(things, names, name -> name.contains(text));
		}
		if (found.size() == 1) {
			return found.get(0);
		}
		throw Refusal.wrongUsage(found.isEmpty()
				? "There is no " + noun + " called \"" + wanted + "\". " + meant(wanted, things, names)
				: "More than one " + noun + " is meant by \"" + wanted + "\": " + listed(found, names[0]) + ". Write more of it.");
	}

	private static <T> List<T> matching(Collection<T> things, Function<T, String>[] names, Predicate<String> test) {
		List<T> found = new ArrayList<>();
		for (T thing : things) {
			if (Stream.of(names).map(n -> n.apply(thing).toLowerCase(Locale.ROOT)).anyMatch(test)) {
				found.add(thing);
			}
		}
		return found;
	}

	private static <T> String meant(String wanted, Collection<T> things, Function<T, String>[] names) {
		List<String> all = Stream.of(names).flatMap(n -> things.stream().map(n)).toList();
		return Nearest.to(wanted, all).map(nearest -> "Is \"" + nearest + "\" meant?")
				.orElseGet(() -> "There are: " + listed(things, names[0]) + ".");
	}

	private static <T> String listed(Collection<T> things, Function<T, String> name) {
		String first = things.stream().limit(MOST_SHOWN).map(name).map(n -> '"' + n + '"').collect(Collectors.joining(", "));
		return things.isEmpty() ? "none" : first + (things.size() > MOST_SHOWN ? " and " + (things.size() - MOST_SHOWN) + " more" : "");
	}
}
